using System.Reflection;
using System.Xml.Linq;

namespace Plumbmark.House.Tests.Architecture;

/// <summary>The documentation comments of a compiled project, found by member.</summary>
internal sealed class Comments
{
    private readonly Dictionary<string, string> _texts;

    private Comments(Dictionary<string, string> texts) => _texts = texts;

    public static Comments Of(string project)
    {
        var file = Path.ChangeExtension(House.AssemblyOf(project).Location, ".xml");
        Assert.True(File.Exists(file), $"{file} is not there: the project writes it when it is built.");
        return new Comments(
            XDocument
                .Load(file)
                .Descendants("member")
                .GroupBy(m => Key(m.Attribute("name")!.Value), StringComparer.Ordinal)
                .ToDictionary(g => g.Key, g => string.Join(' ', g.Select(All)), StringComparer.Ordinal)
        );
    }

    /// <summary>All that is written about a member, attributes included; overloads together; empty when there is nothing.</summary>
    public string Text(MemberInfo member)
    {
        var type = (member as Type ?? member.DeclaringType!).FullName!.Replace('+', '.');
        var key = member switch
        {
            Type => $"T:{type}",
            PropertyInfo p => $"P:{type}.{p.Name}",
            FieldInfo f => $"F:{type}.{f.Name}",
            _ => $"M:{type}.{member.Name}",
        };
        return _texts.GetValueOrDefault(key, "");
    }

    private static string Key(string name)
    {
        var arguments = name.IndexOf('(', StringComparison.Ordinal);
        name = arguments < 0 ? name : name[..arguments];
        var generic = name.IndexOf("``", StringComparison.Ordinal);
        return generic < 0 ? name : name[..generic];
    }

    // Text and attributes: <see cref="Metres"/> and <param name="lengthMetres"> say a unit too.
    private static string All(XElement member) =>
        string.Join(' ', member.DescendantNodes().OfType<XText>().Select(t => t.Value.Trim()))
        + " "
        + string.Join(' ', member.Descendants().Attributes().Select(a => a.Value));
}
