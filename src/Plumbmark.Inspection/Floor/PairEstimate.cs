namespace Plumbmark.Inspection.Floor;

/// <summary>A left and a right point compared about the centre line.</summary>
/// <param name="Left">The left point.</param>
/// <param name="Right">The right point.</param>
/// <param name="SideShiftMetres">How far the middle of the pair lies left of the centre line; null without plan readings.</param>
/// <param name="StaggerMetres">How far the left point stands ahead of the right; null without plan readings.</param>
/// <param name="WidthMetres">Distance across; null without plan readings.</param>
/// <param name="HeightDifferenceMetres">Left minus right as read, the lean of the whole frame included; null without heights on both.</param>
/// <param name="USideShiftMetres">Standard uncertainty of the side shift.</param>
/// <param name="UStaggerMetres">Standard uncertainty of the stagger.</param>
/// <param name="UWidthMetres">Standard uncertainty of the width.</param>
/// <param name="UHeightDifferenceMetres">Standard uncertainty of the height difference.</param>
public sealed record PairEstimate(
    string Left,
    string Right,
    double? SideShiftMetres,
    double? StaggerMetres,
    double? WidthMetres,
    double? HeightDifferenceMetres,
    double? USideShiftMetres,
    double? UStaggerMetres,
    double? UWidthMetres,
    double? UHeightDifferenceMetres
)
{
    /// <summary>Height difference after the lean that all pairs have in common is taken out; null when it is not known. It is what the check looks at.</summary>
    public double? LevelledHeightDifferenceMetres { get; init; }

    /// <summary>Standard uncertainty of <see cref="LevelledHeightDifferenceMetres"/>.</summary>
    public double? ULevelledHeightDifferenceMetres { get; init; }
}
