namespace Plumbmark.Web.Server;

/// <summary>A folder and files that only their owner can read: keys, hashes of phones' secrets.</summary>
public static class OwnFolder
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    /// <summary>Makes the folder, or closes one that is there to others. Null when it cannot be written.</summary>
    public static string? Make(string path)
    {
        try
        {
            Directory.CreateDirectory(path);
            if (!OperatingSystem.IsWindows())
            {
                // On Windows a folder below a person's own is the person's already.
                File.SetUnixFileMode(path, OwnerOnly);
            }

            var probe = Path.Combine(path, $".probe-{Environment.ProcessId}");
            File.WriteAllText(probe, "");
            File.Delete(probe);
            return path;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Writes a file that only its owner can read, whole or not at all.</summary>
    public static void Write(string path, byte[] bytes)
    {
        var next = $"{path}.next";
        var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        using (var file = new FileStream(next, options))
        {
            file.Write(bytes);
            file.Flush(flushToDisk: true);
        }

        File.Move(next, path, overwrite: true);
    }
}
