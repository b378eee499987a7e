namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>What went wrong with a doubted reading or point.</summary>
public enum BlunderKind
{
    /// <summary>Off by an amount that no usual slip explains.</summary>
    FreeAmount,

    /// <summary>Off by exactly an inch: the tape held at its 1 in mark, or a whole inch miscounted.</summary>
    OneInch,

    /// <summary>Off by exactly ten inches: the tape held at its 10 in mark.</summary>
    TenInches,

    /// <summary>Off by exactly a foot.</summary>
    OneFoot,

    /// <summary>Off by exactly 100 mm: the tape held at its 100 mm mark.</summary>
    HundredMillimetres,

    /// <summary>Off by exactly 10 mm: a centimetre miscounted.</summary>
    TenMillimetres,

    /// <summary>The start graduation was subtracted although the tape started at its zero.</summary>
    StartGraduation,

    /// <summary>Taken to the edge of a hole instead of its centre: off by half its diameter.</summary>
    HalfHole,

    /// <summary>A known offset with the wrong sign: off by twice the offset.</summary>
    TwiceOffset,

    /// <summary>Two neighbouring digits exchanged.</summary>
    DigitsSwapped,

    /// <summary>One digit read for another that looks like it: 6 and 9, 3 and 8, 1 and 7.</summary>
    DigitMisread,

    /// <summary>The fraction counted from the wrong end of the inch: 3/8 for 5/8.</summary>
    FractionOtherEnd,

    /// <summary>Inches taken for millimetres, or millimetres for inches.</summary>
    UnitConfused,

    /// <summary>A length measured point to point entered as plan, or the other way round.</summary>
    PlanDirectConfused,

    /// <summary>Left and right exchanged at one end of the reading or at both.</summary>
    SidesSwapped,

    /// <summary>Two readings entered in each other's place.</summary>
    RowsSwapped,

    /// <summary>The point itself: a bad drop, a mark that moved, a fixed place that is wrong.</summary>
    PointOff,
}
