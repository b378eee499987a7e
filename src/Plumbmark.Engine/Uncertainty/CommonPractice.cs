namespace Plumbmark.Engine.Uncertainty;

/// <summary>Figures the trade works with and no standard gives; each is a starting point that repeats replace.</summary>
public static class CommonPractice
{
    /// <summary>What to say when somebody asks where these are from.</summary>
    public const string Source = "common practice, no published source";

    /// <summary>The standard uncertainty of one plumb drop of a point, each way in plan: 0.5 mm.</summary>
    public const double DropMetres = 0.5e-3;

    /// <summary>The standard uncertainty of setting or reading one end of a tape at a mark: 0.5 mm.</summary>
    public const double TapeEndMetres = 0.5e-3;
}
