namespace Plumbmark.Inspection.Book.Checks;

/// <summary>How a figure may have gone wrong between drawing and page, likeliest first. Common practice, no published source.</summary>
public enum SlipKind
{
    /// <summary>A digit taken for one that looks like it: 6 and 9, 3 and 8, 1 and 7, 5 and 6, 0 with 8 or 6.</summary>
    LookAlikeDigit,

    /// <summary>A fraction run into one character: 1/8 scanned as 8.</summary>
    FractionLost,

    /// <summary>Two neighbouring digits changed places.</summary>
    DigitsSwapped,

    /// <summary>The fraction counted from its other end: 3/8 for 5/8.</summary>
    OtherEnd,

    /// <summary>The right count of the wrong division: 3/16 for 3/8.</summary>
    OtherDivision,

    /// <summary>One whole inch, or ten of the unit, too many or too few.</summary>
    WholeStep,

    /// <summary>The decimal point one place off.</summary>
    PointMoved,

    /// <summary>Half or twice: one side for both, or both for one.</summary>
    HalfOrDouble,

    /// <summary>In plan for point to point, or the other way round.</summary>
    PlanForDirect,
}
