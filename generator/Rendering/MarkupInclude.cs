using CareSheets.Pages;
using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace CareSheets.Rendering;

/// <summary>
/// The include function, whose outcome is markup: a part has escaped its values already, and
/// without the mark they would be escaped twice.
/// </summary>
internal sealed class MarkupInclude(IScriptCustomFunction inner) : IScriptCustomFunction
{
    public int RequiredParameterCount => inner.RequiredParameterCount;

    public int ParameterCount => inner.ParameterCount;

    public ScriptVarParamKind VarParamKind => inner.VarParamKind;

    public Type ReturnType => typeof(Html);

    public ScriptParameterInfo GetParameterInfo(int index) => inner.GetParameterInfo(index);

    public object Invoke(
        TemplateContext context, ScriptNode? callerContext, ScriptArray arguments,
        ScriptBlockStatement? blockStatement) =>
        new Html(inner.Invoke(context, callerContext, arguments, blockStatement)?.ToString() ?? "");

    public ValueTask<object?> InvokeAsync(
        TemplateContext context, ScriptNode? callerContext, ScriptArray arguments,
        ScriptBlockStatement? blockStatement) =>
        throw new NotSupportedException("Pages are rendered in step; see EscapingContext.");
}
