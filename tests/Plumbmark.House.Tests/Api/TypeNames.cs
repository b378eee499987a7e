namespace Plumbmark.House.Tests.Api;

/// <summary>Types as they are written in C#.</summary>
internal static class TypeNames
{
    private static readonly Dictionary<Type, string> s_words = new()
    {
        [typeof(void)] = "void",
        [typeof(bool)] = "bool",
        [typeof(byte)] = "byte",
        [typeof(char)] = "char",
        [typeof(int)] = "int",
        [typeof(long)] = "long",
        [typeof(ulong)] = "ulong",
        [typeof(double)] = "double",
        [typeof(decimal)] = "decimal",
        [typeof(string)] = "string",
        [typeof(object)] = "object",
    };

    /// <summary>Such as <c>IReadOnlyList&lt;Length&gt;</c> or <c>NetworkOutcome.Loose</c>, without namespaces.</summary>
    public static string Of(Type type)
    {
        if (type.IsByRef)
        {
            return Of(type.GetElementType()!);
        }

        if (type.IsArray)
        {
            return $"{Of(type.GetElementType()!)}[{new string(',', type.GetArrayRank() - 1)}]";
        }

        if (Nullable.GetUnderlyingType(type) is { } plain)
        {
            return $"{Of(plain)}?";
        }

        if (s_words.TryGetValue(type, out var word) || type.IsGenericParameter)
        {
            return word ?? type.Name;
        }

        var outer = type.DeclaringType is { } declaring ? $"{Of(declaring)}." : "";
        var tick = type.Name.IndexOf('`', StringComparison.Ordinal);
        return tick < 0 ? outer + type.Name
            : type.IsTupleType() ? $"({string.Join(", ", type.GetGenericArguments().Select(Of))})"
            : $"{outer}{type.Name[..tick]}<{string.Join(", ", type.GetGenericArguments().Select(Of))}>";
    }

    private static bool IsTupleType(this Type type) => type.Name.StartsWith("ValueTuple`", StringComparison.Ordinal);
}
