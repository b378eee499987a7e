namespace Plumbmark.Store;

/// <summary>What could be read of a damaged journal, and what is known to be missing.</summary>
/// <param name="Cars">Cars that can be shown.</param>
/// <param name="Entries">Their entries.</param>
/// <param name="Photos">Pictures that are what they were.</param>
/// <param name="EntriesMissing">Entries that were there, by the numbers of those around them or by the file's own list, and cannot be read or no longer go together.</param>
/// <param name="PhotosMissing">Pictures that cannot be read.</param>
internal sealed record Salvaged(int Cars, int Entries, int Photos, int EntriesMissing, int PhotosMissing)
{
    /// <summary>All of that in words.</summary>
    public string Sentence
    {
        get
        {
            var saved = $"{Count(Cars, "car")} with {Count(Entries, "entry", "entries")} and {Count(Photos, "picture")} can be read";
            return (EntriesMissing, PhotosMissing) switch
            {
                (0, 0) => $"{saved}; nothing is known to be missing, but the end of a car's journal may be.",
                (_, 0) =>
                    $"{saved}; {Count(EntriesMissing, "entry", "entries")} cannot or stand behind such a one, and the end of a car's journal may be missing too.",
                _ =>
                    $"{saved}; {Count(EntriesMissing, "entry", "entries")} cannot or stand behind such a one, nor can {Count(PhotosMissing, "picture")}, and the end of a car's journal may be missing too.",
            };
        }
    }

    private static string Count(int number, string one, string? several = null) =>
        number == 1 ? $"1 {one}" : $"{number} {several ?? one + "s"}";
}
