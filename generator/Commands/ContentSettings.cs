using System.ComponentModel;
using CareSheets.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace CareSheets.Commands;

/// <summary>The options that all commands share.</summary>
internal class ContentSettings : CommandSettings
{
    [CommandOption("--content <DIR>")]
    [Description("The folder of the content.")]
    [DefaultValue("content")]
    public string Content { get; init; } = "content";

    [CommandOption("--theme <DIR>")]
    [Description("The folder of the theme.")]
    [DefaultValue("themes/riffle")]
    public string Theme { get; init; } = "themes/riffle";

    [CommandOption("--units <SYSTEM>")]
    [Description("Units to show: metric, us or both.")]
    [DefaultValue("both")]
    public string Units { get; init; } = "both";

    [CommandOption("--json")]
    [Description("Print for programs.")]
    public bool Json { get; init; }

    [CommandOption("--quiet")]
    [Description("Print errors only.")]
    public bool Quiet { get; init; }

    public UnitSystem UnitSystem => Units switch
    {
        "metric" => UnitSystem.Metric,
        "us" => UnitSystem.US,
        _ => UnitSystem.Both,
    };

    /// <summary>The schemas stand beside the content; a content folder elsewhere uses those at hand.</summary>
    public string Schemas
    {
        get
        {
            var beside = Path.Combine(Path.GetDirectoryName(Content.TrimEnd('/', '\\')) ?? "", "schema");
            return Directory.Exists(beside) ? beside : "schema";
        }
    }

    public override ValidationResult Validate() => Units is "metric" or "us" or "both"
        ? ValidationResult.Success()
        : ValidationResult.Error($"--units can't be “{Units}”: it is metric, us or both.");
}
