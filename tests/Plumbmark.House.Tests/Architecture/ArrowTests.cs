using System.Xml.Linq;
using Plumbmark.Testing;

namespace Plumbmark.House.Tests.Architecture;

/// <summary>The arrows between the projects (docs/decisions): Engine, Inspection, then Store and Drawing, then Web, then the executable.</summary>
public class ArrowTests
{
    private static readonly Dictionary<string, string[]> s_allowed = new(StringComparer.Ordinal)
    {
        ["Plumbmark.Engine"] = [],
        ["Plumbmark.Inspection"] = ["Plumbmark.Engine"],
        ["Plumbmark.Store"] = ["Plumbmark.Engine", "Plumbmark.Inspection"],
        ["Plumbmark.Drawing"] = ["Plumbmark.Engine", "Plumbmark.Inspection"],
        ["Plumbmark.Web"] = ["Plumbmark.Engine", "Plumbmark.Inspection", "Plumbmark.Store", "Plumbmark.Drawing"],
        ["Plumbmark"] = ["Plumbmark.Engine", "Plumbmark.Inspection", "Plumbmark.Store", "Plumbmark.Drawing", "Plumbmark.Web"],
    };

    [Fact]
    public void Projects_ReferenceOnlyTheProjectsBeforeThem()
    {
        var projects = Directory.GetFiles(Repository.PathTo("src"), "*.csproj", SearchOption.AllDirectories);
        Assert.Equal(s_allowed.Keys.Order(), projects.Select(p => Path.GetFileNameWithoutExtension(p)).Order());
        var wrong =
            from project in projects
            let name = Path.GetFileNameWithoutExtension(project)
            from reference in XDocument.Load(project).Descendants("ProjectReference")
            let target = Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value.Replace('\\', '/'))
            where !s_allowed[name].Contains(target)
            select $"{name} -> {target}";
        House.None(wrong);
    }

    [Fact]
    public void Engine_ReferencesTheFrameworkAlone()
    {
        var packages = XDocument
            .Load(Repository.PathTo("src", "Plumbmark.Engine", "Plumbmark.Engine.csproj"))
            .Descendants("PackageReference");
        Assert.Empty(packages);
    }
}
