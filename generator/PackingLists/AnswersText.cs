using System.Globalization;
using System.Text;
using CareSheets.Arrivals;

namespace CareSheets.PackingLists;

/// <summary>What was answered for a supplier, as the file that people read and change.</summary>
public static class AnswersText
{
    public static string Print(string supplier, IReadOnlyList<SupplierAnswer> answers)
    {
        var text = new StringBuilder();
        text.Append("# yaml-language-server: $schema=../../../schema/answers.schema.json\n");
        text.Append("# What this supplier means by a name, as people have answered. ");
        text.Append("Take an answer out to be asked again.\n");
        text.Append("supplier: ").Append(YamlText.Plain(supplier)).Append("\nanswers:\n");
        foreach (var answer in answers)
        {
            text.Append("  - said: ").Append(YamlText.Quoted(answer.Said)).Append('\n');
            text.Append("    entry: ").Append(answer.Entry).Append('\n');
            text.Append(CultureInfo.InvariantCulture, $"    since: {answer.Since:yyyy-MM-dd}\n");
        }
        return text.ToString();
    }
}
