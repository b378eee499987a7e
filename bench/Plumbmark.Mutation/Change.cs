namespace Plumbmark.Mutation;

/// <summary>One small change to one file.</summary>
/// <param name="File">The file, below the project's folder.</param>
/// <param name="Start">Where the changed text begins, characters from the start of the file.</param>
/// <param name="From">What stands there.</param>
/// <param name="To">What is put there instead.</param>
/// <param name="Line">The line, from 1.</param>
internal sealed record Change(string File, int Start, string From, string To, int Line)
{
    /// <summary>Whether it stands in what is worked out once when the program starts: then each run needs a program of its own.</summary>
    public bool IsOnce { get; init; }

    /// <summary>A text around the change, with the change in it.</summary>
    public string In(string text, int textStart) =>
        string.Concat(text.AsSpan(0, Start - textStart), To, text.AsSpan(Start - textStart + From.Length));

    /// <summary>Such as <c>Gate.cs:98  t.AfterBite is null  ->  !(t.AfterBite is null)</c>.</summary>
    public override string ToString() => $"{Path.GetFileName(File)}:{Line}  {OneLine(From)}  ->  {OneLine(To)}";

    private static string OneLine(string text)
    {
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length > 100 ? $"{line[..100]}…"
            : line.Length == 0 ? "nothing"
            : line;
    }
}
