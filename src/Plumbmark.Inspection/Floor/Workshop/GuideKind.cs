namespace Plumbmark.Inspection.Floor.Workshop;

/// <summary>How a guide is measured.</summary>
public enum GuideKind
{
    /// <summary>Between the two floor marks, or with a trammel set to plan length.</summary>
    Plan,

    /// <summary>How much higher the moved point is than the other.</summary>
    Rise,
}
