using System.Reflection;
using System.Text.RegularExpressions;

namespace Plumbmark.House.Tests.Architecture;

/// <summary>Every public number of Engine and Inspection says its unit: in its name, or in its own words or its type's.</summary>
/// <remarks>That every public member has a comment at all is the compiler's to refuse (CS1591).</remarks>
public partial class DocumentedTests
{
    public static TheoryData<string> Projects => ["Plumbmark.Engine", "Plumbmark.Inspection"];

    [Theory]
    [MemberData(nameof(Projects))]
    public void EveryPublicType_IsDescribed(string project)
    {
        var documents = Comments.Of(project);
        var missing = House.AssemblyOf(project).GetExportedTypes().Where(t => documents.Text(t).Length < 10).Select(t => t.FullName);
        House.None(missing);
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void EveryPublicDouble_HasAUnit(string project)
    {
        var documents = Comments.Of(project);
        var missing =
            from type in House.AssemblyOf(project).GetExportedTypes()
            from number in NumbersOf(type)
            where
                !HasUnit(number.Name)
                && !HasUnit(documents.Text(number.Member) + " " + Inherited(documents, number.Member) + " " + documents.Text(type))
            select $"{type.FullName}.{number.Name}";
        House.None(missing.Distinct(StringComparer.Ordinal));
    }

    private static IEnumerable<(string Name, MemberInfo Member)> NumbersOf(Type type)
    {
        const BindingFlags Own = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        foreach (var property in type.GetProperties(Own).Where(p => IsNumber(p.PropertyType)))
        {
            yield return (property.Name, property);
        }

        foreach (var field in type.GetFields(Own).Where(f => IsNumber(f.FieldType)))
        {
            yield return (field.Name, field);
        }

        foreach (var method in type.GetMethods(Own).Where(m => !m.IsSpecialName && m.Name is not ("Deconstruct" or "Equals")))
        {
            if (IsNumber(method.ReturnType))
            {
                yield return (method.Name, method);
            }

            foreach (var parameter in method.GetParameters().Where(p => IsNumber(p.ParameterType)))
            {
                yield return ($"{method.Name}({parameter.Name})", method);
            }
        }
    }

    private static string Inherited(Comments documents, MemberInfo member) =>
        member.DeclaringType!.BaseType?.GetMember(member.Name).FirstOrDefault() is { } above ? documents.Text(above) : "";

    private static bool IsNumber(Type type) =>
        (Nullable.GetUnderlyingType(type) ?? (type.IsArray || type.IsByRef ? type.GetElementType()! : type)) is var t
        && (t == typeof(double) || t == typeof(double[]) || t == typeof(ReadOnlySpan<double>) || t == typeof(Span<double>));

    private static bool HasUnit(string text) => Units().IsMatch(text);

    // A unit, or a word for a number that has none, or the words "own unit" of a function of anything.
    [GeneratedRegex(
        @"metre|millimetre|radian|degree|newton|pascal|\bMPa\b|\bGPa\b|\bmm\b|\bin\b \b(inch|mm)|inches|second|minute|\bm[²;.]|\bm⁴|per metre|pound"
            + @"|probabilit|chance|ratio|share|factor|fraction|odds|quantile|percent|per cent|dimensionless|no unit|same unit|own unit|any unit|its unit|unit of|units of"
            + @"|count|number of|weight|strain|curvature|cosine|sine|standardised|degrees of freedom|\bχ²|\bw =|logarithm|\blog\b|BIC|information|direction|scale|relative",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Units();
}
