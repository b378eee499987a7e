namespace Plumbmark.Inspection.Book;

/// <summary>Whether something in the book is meant for a car.</summary>
public enum SerialFit
{
    /// <summary>It is.</summary>
    Applies,

    /// <summary>It is not: the car lies outside.</summary>
    DoesNotApply,

    /// <summary>The car's number or equipment is unknown, or cannot be compared with what is printed. Not a no.</summary>
    CannotTell,
}
