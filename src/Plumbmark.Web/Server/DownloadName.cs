using System.Text;

namespace Plumbmark.Web.Server;

/// <summary>A name for a file to keep that every file system and every header takes: letters, digits and dashes, and not long.</summary>
internal static class DownloadName
{
    private const int Longest = 60;

    /// <summary>The name from what a person wrote; "car" when nothing of it can stand in one.</summary>
    public static string Of(string words)
    {
        var safe = new StringBuilder();
        foreach (var letter in words.ToLowerInvariant())
        {
            safe.Append(char.IsAsciiLetterOrDigit(letter) ? letter : '-');
        }

        var name = string.Join('-', safe.ToString().Split('-', StringSplitOptions.RemoveEmptyEntries));
        return name.Length == 0 ? "car" : name[..Math.Min(Longest, name.Length)].TrimEnd('-');
    }
}
