namespace Plumbmark.Inspection.Book;

/// <summary>The sorts of <see cref="BookSubject"/>, as they are named in files, tables and forms.</summary>
public enum SubjectKind
{
    /// <summary>From point to point, not said in which sense.</summary>
    Length,

    /// <summary>From point to point in plan.</summary>
    Plan,

    /// <summary>From point to point in space.</summary>
    Direct,

    /// <summary>From point to point along the car.</summary>
    Along,

    /// <summary>From point to point across the car.</summary>
    Across,

    /// <summary>From point to point upward.</summary>
    Rise,

    /// <summary>A point's distance behind the datum.</summary>
    Station,

    /// <summary>A point's distance from the centre line.</summary>
    Side,

    /// <summary>A point's height above the datum.</summary>
    Height,

    /// <summary>A dimension of a loose part.</summary>
    Part,

    /// <summary>Anything else under its own name.</summary>
    Named,
}
