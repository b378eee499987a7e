namespace Plumbmark.Inspection.Book;

/// <summary>In which sense a printed length runs from one point to another.</summary>
public enum LengthSense
{
    /// <summary>The book does not say whether in plan or point to point.</summary>
    Unsaid,

    /// <summary>As the tape lies between the plumb marks: √(dx² + dy²).</summary>
    Plan,

    /// <summary>Point to point in space.</summary>
    Direct,

    /// <summary>Along the car: how far the second point lies behind the first.</summary>
    Along,

    /// <summary>Across the car: how far the first point lies to the left of the second.</summary>
    Across,

    /// <summary>Upward: how far the second point lies above the first.</summary>
    Rise,
}
