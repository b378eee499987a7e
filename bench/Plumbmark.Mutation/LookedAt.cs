namespace Plumbmark.Mutation;

/// <summary>Changes that no test notices and that somebody has looked at: which do the same as before, and why the others are left.</summary>
internal static class LookedAt
{
    /// <summary>Reads the list: a change as it is printed without its line number, then two number signs, then the reason; "same: ..." where it does the same.</summary>
    public static Dictionary<string, string> Read(string file) =>
        File.ReadAllLines(file)
            .Select(l => l.Split("  ##  "))
            .Where(l => l.Length == 2)
            .ToDictionary(l => l[0], l => l[1], StringComparer.Ordinal);

    /// <summary>What was said of a change; null when nobody has looked.</summary>
    public static string? Said(this Dictionary<string, string> lookedAt, Change change) =>
        lookedAt.GetValueOrDefault($"{change}".Replace($":{change.Line} ", " ", StringComparison.Ordinal));
}
