namespace Plumbmark.House.Tests.Architecture;

/// <summary>The arrows as compiled: what an assembly really uses of the others.</summary>
public class CompiledArrowTests
{
    [Theory]
    [InlineData("Plumbmark.Engine")]
    [InlineData("Plumbmark.Inspection", "Plumbmark.Engine")]
    [InlineData("Plumbmark.Store", "Plumbmark.Engine", "Plumbmark.Inspection")]
    [InlineData("Plumbmark.Drawing", "Plumbmark.Engine", "Plumbmark.Inspection")]
    [InlineData("Plumbmark.Web", "Plumbmark.Engine", "Plumbmark.Inspection", "Plumbmark.Store", "Plumbmark.Drawing")]
    public void Assembly_UsesOnlyTheAssembliesBeforeIt(string project, params string[] before)
    {
        var used = House
            .AssemblyOf(project)
            .GetReferencedAssemblies()
            .Select(a => a.Name!)
            .Where(n => n.StartsWith("Plumbmark", StringComparison.Ordinal));
        Assert.Empty(used.Except(before));
    }

    [Theory]
    [InlineData("Plumbmark.Engine")]
    [InlineData("Plumbmark.Inspection", "Plumbmark.Engine")]
    public void Assembly_StandsOnTheFrameworkAlone(string project, params string[] before)
    {
        var others = House
            .AssemblyOf(project)
            .GetReferencedAssemblies()
            .Select(a => a.Name!)
            .Where(n => !n.StartsWith("System.", StringComparison.Ordinal) && n is not ("netstandard" or "mscorlib"));
        Assert.Equal(before, others);
    }
}
