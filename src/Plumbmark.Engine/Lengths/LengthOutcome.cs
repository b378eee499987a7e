namespace Plumbmark.Engine.Lengths;

/// <summary>What came of reading a length from text: the length, or why not. See <see cref="LengthText"/>.</summary>
public abstract record LengthOutcome
{
    private LengthOutcome() { }

    /// <summary>The text was understood.</summary>
    /// <param name="Value">The exact length, which keeps the text as typed.</param>
    public sealed record Read(Length Value) : LengthOutcome;

    /// <summary>The text was not understood, or could mean two things.</summary>
    /// <param name="Position">Where in the text the fault begins, counted from 0; the text's own length when something is missing at its end.</param>
    /// <param name="Found">The piece of text at fault, safe to print; empty when something is missing.</param>
    /// <param name="Sentence">What was found and what is allowed, for the person who typed it.</param>
    public sealed record Refused(int Position, string Found, string Sentence) : LengthOutcome;

    /// <summary>Goes on with whichever of the two it is.</summary>
    public T Match<T>(Func<Length, T> read, Func<Refused, T> refused)
    {
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(refused);
        return this switch
        {
            Read r => read(r.Value),
            Refused r => refused(r),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
