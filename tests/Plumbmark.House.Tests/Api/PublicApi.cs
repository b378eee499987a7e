using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;

namespace Plumbmark.House.Tests.Api;

/// <summary>Writes what an assembly shows to others: a line for each type, an indented line for each member, in the order of their names.</summary>
internal static class PublicApi
{
    private const BindingFlags Own =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    public static string Of(Assembly assembly)
    {
        var text = new StringBuilder();
        foreach (var type in assembly.GetExportedTypes().OrderBy(t => t.FullName, StringComparer.Ordinal))
        {
            text.Append(Head(type)).Append('\n');
            foreach (var line in Members(type).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
            {
                text.Append("    ").Append(line).Append('\n');
            }
        }

        return text.ToString();
    }

    private static string Head(Type type)
    {
        var kind =
            type.IsEnum ? "enum"
            : type.IsSubclassOf(typeof(Delegate)) ? "delegate"
            : type.IsInterface ? "interface"
            : type.IsValueType ? "struct"
            : type is { IsAbstract: true, IsSealed: true } ? "static class"
            : type.IsAbstract ? "abstract class"
            : "class";
        var parent =
            type.BaseType is { } b && b != typeof(object) && b != typeof(ValueType) && !type.IsEnum && kind != "delegate"
                ? $" : {TypeNames.Of(b)}"
                : "";
        return $"{kind} {type.Namespace}.{TypeNames.Of(type)}{parent}";
    }

    private static IEnumerable<string> Members(Type type)
    {
        if (type.IsEnum)
        {
            return type.GetFields(BindingFlags.Public | BindingFlags.Static)
                .Select(f => $"{f.Name} = {Convert.ToInt64(f.GetRawConstantValue())}");
        }

        if (type.IsSubclassOf(typeof(Delegate)))
        {
            return [Method(type.GetMethod("Invoke")!)];
        }

        return type.GetConstructors(Own)
            .Where(c => IsShown(c) && !(c.GetParameters() is [var only] && only.ParameterType == type))
            .Select(c => $"new({Parameters(c)})")
            .Concat(type.GetFields(Own).Where(f => f.IsPublic).Select(Field))
            .Concat(
                type.GetProperties(Own)
                    .Where(p => p.Name != "EqualityContract" && p.GetAccessors(nonPublic: true).Any(IsShown))
                    .Select(Property)
            )
            .Concat(type.GetMethods(Own).Where(m => IsShown(m) && !IsMadeByCompiler(m)).Select(Method));
    }

    private static bool IsShown(MethodBase m) => m.IsPublic || m.IsFamily || m.IsFamilyOrAssembly;

    // Getters and setters stand with their property; what every record has says nothing about this one.
    private static bool IsMadeByCompiler(MethodInfo m) =>
        m.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false)
        || (m.IsSpecialName && !m.Name.StartsWith("op_", StringComparison.Ordinal))
        || m.Name is "PrintMembers" or "<Clone>$";

    private static string Field(FieldInfo f) =>
        f.IsLiteral
            ? $"const {TypeNames.Of(f.FieldType)} {f.Name} = {f.GetRawConstantValue() ?? "null"}"
            : $"{TypeNames.Of(f.FieldType)} {f.Name}";

    private static string Property(PropertyInfo p)
    {
        var set =
            p.SetMethod is { } s && IsShown(s)
                ? s.ReturnParameter.GetRequiredCustomModifiers().Any(m => m.Name == "IsExternalInit")
                    ? " init;"
                    : " set;"
                : "";
        var index = p.GetIndexParameters() is { Length: > 0 } i ? $"[{string.Join(", ", i.Select(Parameter))}]" : "";
        var isStatic = p.GetAccessors(nonPublic: true).Any(a => a.IsStatic) ? "static " : "";
        return $"{isStatic}{TypeNames.Of(p.PropertyType)}{Nullability(p)} {p.Name}{index} {{ get;{set} }}";
    }

    private static string Nullability(PropertyInfo p) =>
        !p.PropertyType.IsValueType && new NullabilityInfoContext().Create(p).ReadState == NullabilityState.Nullable ? "?" : "";

    private static string Method(MethodInfo m)
    {
        var generic = m.IsGenericMethod ? $"<{string.Join(", ", m.GetGenericArguments().Select(TypeNames.Of))}>" : "";
        return $"{(m.IsStatic ? "static " : "")}{TypeNames.Of(m.ReturnType)} {m.Name}{generic}({Parameters(m)})";
    }

    private static string Parameters(MethodBase m) => string.Join(", ", m.GetParameters().Select(Parameter));

    private static string Parameter(ParameterInfo p) =>
        $"{(p.IsOut ? "out " : p.ParameterType.IsByRef ? p.IsIn ? "in " : "ref " : "")}{TypeNames.Of(p.ParameterType)} {p.Name}"
        + (p.HasDefaultValue ? $" = {p.DefaultValue ?? "null"}" : "");
}
