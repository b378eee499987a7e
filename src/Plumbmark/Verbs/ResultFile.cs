using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary>A file that a verb writes: a path, or <c>-</c> for standard output.</summary>
internal static class ResultFile
{
    /// <summary>Writes the whole file, or says in one sentence why not.</summary>
    /// <exception cref="InputRefusedException">It cannot be written there.</exception>
    public static void Write(string path, byte[] bytes, Output output)
    {
        if (path == "-")
        {
            output.Result(bytes);
            return;
        }

        try
        {
            File.WriteAllBytes(path, bytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputRefusedException(Texts.Say("verb.result-file.the-file-cannot-be-written", path, e.Message));
        }
    }
}
