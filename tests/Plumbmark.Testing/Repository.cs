namespace Plumbmark.Testing;

/// <summary>Where the checkout stands, so that a test can read schemas, demo files and published data.</summary>
public static class Repository
{
    /// <summary>The folder that holds <c>Plumbmark.slnx</c>.</summary>
    public static string Root { get; } = Find();

    /// <summary>A path below <see cref="Root"/>.</summary>
    public static string PathTo(params ReadOnlySpan<string> parts) => Path.Combine([Root, .. parts]);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Plumbmark.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"No Plumbmark.slnx above {AppContext.BaseDirectory}.");
    }
}
