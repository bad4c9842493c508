using System.Reflection;
using CareSheets.Pages;

namespace CareSheets.Tests.Rendering;

/// <summary>
/// Fills a page record of any kind, and all records and lists in it, with texts that are told
/// apart by a number; whoever asks is given the property's name too. A property of a type that it
/// does not know fails the test that asked.
/// </summary>
internal sealed class PageFiller(Func<string, int, string> text, bool flag, bool isFull)
{
    private int _count;

    /// <summary>All kinds of page there are, found in the program.</summary>
    public static IReadOnlyList<Type> Kinds { get; } =
    [
        .. typeof(IPage).Assembly.GetTypes().Where(t => t.IsAssignableTo(typeof(IPage)) && t is { IsInterface: false })
            .OrderBy(t => t.Name, StringComparer.Ordinal),
    ];

    public IPage Make(Type kind) => (IPage)Record(kind);

    private object Record(Type type)
    {
        var made = type.GetConstructors().OrderByDescending(c => c.GetParameters().Length).First();
        var record = made.Invoke([.. made.GetParameters().Select(p => Value(p.Name!, p.ParameterType, IsOptional(p)))]);
        var filled = made.GetParameters().Select(p => p.Name).ToHashSet();
        foreach (var property in type.GetProperties().Where(p => p.CanWrite && !filled.Contains(p.Name)))
            property.SetValue(record, Value(property.Name, property.PropertyType, IsOptional(property)));
        return record;
    }

    private object? Value(string name, Type type, bool isOptional)
    {
        if (isOptional && !isFull)
            return null;
        if (type == typeof(string))
            return text(name, _count++);
        if (type == typeof(bool))
            return flag;
        if (type == typeof(int))
            return 7;
        if (type == typeof(Html))
            return new Html($"<p>own markup {_count++}</p>");
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
            return List(name, type.GetGenericArguments()[0]);
        return type.Namespace?.StartsWith(typeof(IPage).Namespace!, StringComparison.Ordinal) == true
            ? Record(type)
            : throw new NotSupportedException($"The filler does not know {type}; teach it.");
    }

    private Array List(string name, Type item)
    {
        var list = Array.CreateInstance(item, isFull ? 2 : 0);
        for (var i = 0; i < list.Length; i++)
            list.SetValue(Value(name, item, false), i);
        return list;
    }

    private static bool IsOptional(ParameterInfo parameter) =>
        new NullabilityInfoContext().Create(parameter).ReadState == NullabilityState.Nullable;

    private static bool IsOptional(PropertyInfo property) =>
        new NullabilityInfoContext().Create(property).ReadState == NullabilityState.Nullable;
}
