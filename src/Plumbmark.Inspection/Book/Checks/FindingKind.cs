namespace Plumbmark.Inspection.Book.Checks;

/// <summary>What a page says against itself, or leaves open.</summary>
public enum FindingKind
{
    /// <summary>Parts do not add up to their total.</summary>
    ChainDoesNotClose,

    /// <summary>Three lengths that no triangle has.</summary>
    NoTriangle,

    /// <summary>Left and right of the car are given differently.</summary>
    SidesDiffer,

    /// <summary>The inch column and the millimetre column disagree.</summary>
    ColumnsDisagree,

    /// <summary>Figures that the page calls equal differ.</summary>
    NotEqual,

    /// <summary>Two figures for one thing, both meant for the same cars.</summary>
    TwoFigures,

    /// <summary>Lengths in plan and point to point that do not go together.</summary>
    PlanAgainstDirect,

    /// <summary>A figure that all the others together contradict.</summary>
    DoesNotFit,

    /// <summary>Serial numbers for which nothing is given.</summary>
    SerialGap,

    /// <summary>Serial numbers whose ranges nothing can put in order.</summary>
    SerialsUnordered,

    /// <summary>The page does not say whether a length is in plan, where it makes a difference.</summary>
    SenseUnsaid,
}
