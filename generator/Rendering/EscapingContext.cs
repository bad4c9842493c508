using System.Collections.Concurrent;
using CareSheets.Pages;
using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace CareSheets.Rendering;

/// <summary>
/// A template's surroundings in which everything printed is text and gets escaped, unless it is
/// <see cref="Html"/>. One per page: it must not be shared between threads. Never call RenderAsync
/// with it: that way of writing goes past <see cref="Write(Scriban.Parsing.SourceSpan, object)"/>.
/// </summary>
internal sealed class EscapingContext : TemplateContext
{
    /// <summary>Far above the longest list of a page, so that a loop without end still ends.</summary>
    private const int MostLoops = 1_000_000;

    /// <summary>Functions that would make two runs differ, or run text as a template.</summary>
    private static readonly string[] Removed = ["date", "object", "math", "html", "regex"];

    private static readonly ScriptObject Functions = MakeFunctions();

    /// <summary>How fields of each type of record are read, found out once for all pages.</summary>
    private static readonly ConcurrentDictionary<Type, IObjectAccessor?> Accessors = new();

    public EscapingContext(Theme theme)
        : base(Functions)
    {
        LoopLimit = MostLoops;
        LimitToString = 0; // the default cuts long pages without a word
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        AutoIndent = false;
        TemplateLoader = new NoLoader();
        foreach (var (path, template) in theme.Templates)
            CachedTemplates[path] = template;
    }

    public override TemplateContext Write(Scriban.Parsing.SourceSpan span, object? textAsObject) => textAsObject switch
    {
        null => this,
        Html html => base.Write(span, html.Markup),
        LatinText text => base.Write(span, HtmlText.Mark(text.Text)),
        _ => base.Write(span, HtmlText.Escape(ObjectToString(textAsObject) ?? "")),
    };

    protected override IObjectAccessor? GetMemberAccessorImpl(object target) =>
        Accessors.GetOrAdd(target.GetType(), _ => base.GetMemberAccessorImpl(target));

    /// <summary>Shared by all pages and never written to again.</summary>
    private static ScriptObject MakeFunctions()
    {
        var functions = new TemplateContext().BuiltinObject;
        foreach (var name in Removed)
            functions.Remove(name);
        var include = (IScriptCustomFunction)functions["include"]!;
        functions.SetValue("include", new MarkupInclude(include), true);
        functions.IsReadOnly = true;
        return functions;
    }

    /// <summary>All templates are there before the first page; what is not there does not exist.</summary>
    private sealed class NoLoader : ITemplateLoader
    {
        public string GetPath(TemplateContext context, Scriban.Parsing.SourceSpan callerSpan, string templateName) =>
            templateName;

        public string Load(TemplateContext context, Scriban.Parsing.SourceSpan callerSpan, string templatePath) =>
            throw new ScriptRuntimeException(callerSpan, $"There is no part {templatePath}.");

        public ValueTask<string?> LoadAsync(
            TemplateContext context, Scriban.Parsing.SourceSpan callerSpan, string templatePath) =>
            throw new ScriptRuntimeException(callerSpan, $"There is no part {templatePath}.");
    }
}
