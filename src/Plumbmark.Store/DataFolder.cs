namespace Plumbmark.Store;

/// <summary>Where this user's Plumbmark keeps its files when not told otherwise.</summary>
public static class DataFolder
{
    /// <summary>
    /// <c>$XDG_DATA_HOME/plumbmark</c> or <c>~/.local/share/plumbmark</c> on Linux, <c>~/Library/Application Support/plumbmark</c> on a
    /// Mac, <c>%APPDATA%\plumbmark</c> on Windows.
    /// </summary>
    public static string Path()
    {
        // The framework follows XDG_DATA_HOME for LocalApplicationData, and takes the roaming folder on Windows for ApplicationData.
        var folder = OperatingSystem.IsWindows()
            ? Environment.SpecialFolder.ApplicationData
            : Environment.SpecialFolder.LocalApplicationData;
        var home = Environment.GetFolderPath(folder, Environment.SpecialFolderOption.DoNotVerify);
        return System.IO.Path.Combine(home.Length > 0 ? home : System.IO.Path.GetTempPath(), "plumbmark");
    }

    /// <summary>The journal file in it.</summary>
    public static string JournalPath() => System.IO.Path.Combine(Path(), "plumbmark.db");
}
