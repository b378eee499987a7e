namespace Plumbmark.Inspection.Floor.Comparing;

/// <summary>What is compared with what.</summary>
internal enum ContrastKind
{
    /// <summary>The middle of a pair with the centre line: positive to the left.</summary>
    Middle,

    /// <summary>A left point with its partner, fore and aft: positive when the left stands ahead.</summary>
    Stagger,

    /// <summary>A left point with its partner in height: positive when the left is higher.</summary>
    Level,

    /// <summary>A point with the book, forward.</summary>
    BookX,

    /// <summary>A point with the book, leftward.</summary>
    BookY,

    /// <summary>A point with the book, upward.</summary>
    BookZ,

    /// <summary>The distance across a pair with the book's.</summary>
    Width,

    /// <summary>How far a point hangs below the line through two others, with the book's: positive when it hangs lower.</summary>
    Sag,
}
