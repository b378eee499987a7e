namespace Plumbmark.Inspection.Road;

/// <summary>What the adjusters of one side can do: the settings that bring its angles nearest to the book's, and what is then left.</summary>
/// <param name="Side">The side.</param>
/// <param name="Settings">Each adjuster with its setting.</param>
/// <param name="Angles">The angles aimed at, before and after.</param>
/// <param name="IsRestored">Whether every angle with limits comes within them; null when none has limits, or when what is measured leaves it open.</param>
/// <param name="IsFaultAbsorbed">Whether it takes unusual settings: the angles come right and the fault stays.</param>
/// <param name="Sentences">The answer in words.</param>
public sealed record SideSettings(
    Side Side,
    IReadOnlyList<AdjusterSetting> Settings,
    IReadOnlyList<AimedAngle> Angles,
    bool? IsRestored,
    bool IsFaultAbsorbed,
    IReadOnlyList<string> Sentences
);
