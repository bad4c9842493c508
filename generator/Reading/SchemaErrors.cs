using NJsonSchema;
using NJsonSchema.Validation;

namespace CareSheets.Reading;

/// <summary>
/// NJsonSchema nests what it found: a failed alternative is one error whose children hold the real
/// reasons. This takes the reasons out.
/// </summary>
internal static class SchemaErrors
{
    public static IEnumerable<ValidationError> Flatten(IEnumerable<ValidationError> errors) =>
        errors.SelectMany(Flatten);

    /// <summary><c>#/care.ph.keep</c> to <c>care.ph.keep</c>.</summary>
    public static string PathOf(ValidationError error) => (error.Path ?? "").TrimStart('#', '/');

    private static IEnumerable<ValidationError> Flatten(ValidationError error) => error switch
    {
        MultiTypeValidationError types => ByType(types) is { Count: > 0 } found ? Flatten(found) : [error],
        ChildSchemaValidationError { Errors.Count: > 0 } child => Flatten(Reasons(child)),
        _ => [error],
    };

    /// <summary>All branches count for allOf and items; else the one that fits best, of equals the first.</summary>
    private static ICollection<ValidationError> Reasons(ChildSchemaValidationError error)
    {
        var branches = error.Errors.Values.Where(e => e.Count > 0).ToList();
        if (error.Kind is not (ValidationErrorKind.NotAnyOf or ValidationErrorKind.NotOneOf))
            return [.. branches.SelectMany(b => b)];
        return branches
            .OrderBy(b => b.Any(e => PathOf(e) == PathOf(error) && IsWrongType(e)) ? 1 : 0)
            .ThenBy(b => b.Count(e => e.Kind != ValidationErrorKind.PropertyRequired))
            .FirstOrDefault() ?? [];
    }

    /// <summary>Of a field that may be text, a number or fields: the reasons of what it really is.</summary>
    private static List<ValidationError> ByType(MultiTypeValidationError error) =>
        [.. error.Errors.Values.Where(b => b.Count > 0 && !b.Any(IsWrongType)).SelectMany(b => b)];

    private static bool IsWrongType(ValidationError error) => error.Kind
        is ValidationErrorKind.StringExpected or ValidationErrorKind.NumberExpected
        or ValidationErrorKind.IntegerExpected or ValidationErrorKind.BooleanExpected
        or ValidationErrorKind.ObjectExpected or ValidationErrorKind.ArrayExpected;
}
