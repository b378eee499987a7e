using System.Reflection.PortableExecutable;

namespace Plumbmark.Journeys;

/// <summary>The program that these journeys start is the one that <c>./plumbmark</c> builds: machine code beside the portable code, where its compiler could be fetched.</summary>
public sealed class PrecompiledJourneys
{
    private static readonly string[] s_own =
    [
        "plumbmark",
        "Plumbmark.Engine",
        "Plumbmark.Inspection",
        "Plumbmark.Store",
        "Plumbmark.Drawing",
        "Plumbmark.Web",
    ];

    [Fact]
    public void EachOwnAssembly_HoldsMachineCode()
    {
#if DEBUG
        Assert.Skip("Only Release builds are compiled beforehand.");
#endif
        Assert.SkipUnless(IsCompilerHere(), "The compiler for a quick start could not be fetched here, so the plain program is tested.");
        Assert.All(s_own, name => Assert.True(HoldsMachineCode(Path.Combine(AppContext.BaseDirectory, name + ".dll")), name));
    }

    private static bool IsCompilerHere()
    {
        var packages =
            Environment.GetEnvironmentVariable("NUGET_PACKAGES")
            ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
        var runtime = Environment.Version.ToString();
        return Directory.Exists(packages)
            && Directory
                .EnumerateDirectories(packages, "microsoft.netcore.app.crossgen2.*")
                .Any(p => Directory.Exists(Path.Combine(p, runtime)));
    }

    private static bool HoldsMachineCode(string assembly)
    {
        using var file = File.OpenRead(assembly);
        using var image = new PEReader(file);
        return image.PEHeaders.CorHeader!.ManagedNativeHeaderDirectory.Size > 0;
    }
}
