namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>How likely slips are before the readings are looked at. Own judgement; no published source counts them.</summary>
/// <remarks>
/// They decide only between explanations that fit about equally well: a factor of two here moves odds by two, while a reading that is ten sigma off
/// moves them by e⁵⁰.
/// </remarks>
internal static class BlunderPriors
{
    /// <summary>Chance that a reading is a blunder: one in a hundred.</summary>
    public const double Reading = 0.01;

    /// <summary>Chance that a point is off: a bad drop, a wrong fixed place.</summary>
    public const double Point = 0.01;

    /// <summary>Chance that a floor mark moved while the lengths were taken.</summary>
    public const double MovedMark = 0.002;

    /// <summary>
    /// Sizes of errors that no slip explains, standard deviations in metres, each as likely: nobody knows whether a free error is of millimetres or
    /// decimetres.
    /// </summary>
    public static IReadOnlyList<double> FreeSizesMetres { get; } = [0.005, 0.02, 0.08, 0.3];

    /// <summary>Sizes of errors of a point.</summary>
    public static IReadOnlyList<double> PointSizesMetres { get; } = [0.002, 0.006, 0.02, 0.06];

    /// <summary>Share of a kind among all blunders of a reading; shared equally by the alternatives of that kind.</summary>
    public static double Share(BlunderKind kind) =>
        kind switch
        {
            BlunderKind.FreeAmount => 0.16,
            BlunderKind.OneInch => 0.13,
            BlunderKind.TenInches => 0.06,
            BlunderKind.HundredMillimetres => 0.06,
            BlunderKind.OneFoot => 0.04,
            BlunderKind.TenMillimetres => 0.06,
            BlunderKind.StartGraduation => 0.03,
            BlunderKind.HalfHole => 0.03,
            BlunderKind.TwiceOffset => 0.02,
            BlunderKind.DigitsSwapped => 0.10,
            BlunderKind.DigitMisread => 0.04,
            BlunderKind.FractionOtherEnd => 0.04,
            BlunderKind.UnitConfused => 0.01,
            BlunderKind.PlanDirectConfused => 0.04,
            BlunderKind.SidesSwapped => 0.18,
            _ => 0,
        };

    /// <summary>Chance that two given readings stand in each other's place: likely for neighbours on the list, unlikely for others.</summary>
    /// <param name="rowsApart">How far apart they stand in the list.</param>
    /// <param name="readings">How many readings there are.</param>
    public static double RowsSwapped(int rowsApart, int readings) => rowsApart <= 2 ? 0.001 : 0.001 / readings;
}
