namespace Plumbmark.Drawing.Photos;

/// <summary>What became of a file that was given as a photo.</summary>
public abstract record PhotoOutcome
{
    private PhotoOutcome() { }

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(Func<Taken, T> taken, Func<string, T> refused) =>
        this switch
        {
            Taken t => taken(t),
            Refused r => refused(r.Sentence),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>A picture, made anew from its pixels: upright, of a size to look at, and without anything that was written beside them.</summary>
    /// <param name="Bytes">The picture.</param>
    /// <param name="ContentType">Its type.</param>
    /// <param name="Width">Pixels across.</param>
    /// <param name="Height">Pixels down.</param>
    public sealed record Taken(byte[] Bytes, string ContentType, int Width, int Height) : PhotoOutcome;

    /// <summary>Not taken.</summary>
    /// <param name="Sentence">What was found and what is allowed.</param>
    public sealed record Refused(string Sentence) : PhotoOutcome;
}
