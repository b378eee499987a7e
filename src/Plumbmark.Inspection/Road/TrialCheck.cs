namespace Plumbmark.Inspection.Road;

/// <summary>How one figure's linear uncertainty compares with trying it out: many cars drawn at random within what was measured.</summary>
/// <param name="Kind">The figure.</param>
/// <param name="Side">Its side; null for the car.</param>
/// <param name="LinearLow">Lower end of the 95 % interval by linear propagation about the mean, radians or metres.</param>
/// <param name="LinearHigh">Its upper end.</param>
/// <param name="TriedLow">Lower end by trials.</param>
/// <param name="TriedHigh">Its upper end.</param>
/// <param name="Tolerance">How far the ends may differ (JCGM 101:2008, 8.1, one significant digit of u).</param>
/// <param name="Agrees">Whether both ends agree; false too when some trials did not go together.</param>
/// <param name="DoNotGoTogether">In how many trials the suspension did not go together.</param>
public sealed record TrialCheck(
    FigureKind Kind,
    Side? Side,
    double LinearLow,
    double LinearHigh,
    double TriedLow,
    double TriedHigh,
    double Tolerance,
    bool Agrees,
    int DoNotGoTogether
);
