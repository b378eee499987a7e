namespace Plumbmark.Engine.Uncertainty;

/// <summary>
/// What a tape's maker promises: the maximum permissible error ±(a + bL) between two marks, and c more at a hook. Not how well it is
/// read: that is <see cref="ReadingUncertainty"/>.
/// </summary>
/// <remarks>
/// For adjusting, the promise becomes two parameters common to all readings of that tape, a zero error and a scale error, each somewhere
/// in its rectangular bound. So they cancel between left and right and do not between tape and book.
/// </remarks>
/// <param name="Name">Such as "class II".</param>
/// <param name="FixedMetres">a, in metres.</param>
/// <param name="PerMetre">b, metres of error per metre of length.</param>
/// <param name="HookMetres">c, added when the length starts at the hook or the end of the tape.</param>
/// <param name="StepMetres">The step to which L is rounded up: a metre, or a yard.</param>
/// <param name="Source">Where the figures are from.</param>
public sealed record TapeAccuracy(string Name, double FixedMetres, double PerMetre, double HookMetres, double StepMetres, string Source)
{
    private const string Mid = "Directive 2014/32/EU, Annex X (MI-008), chapter I, 1 and 2; the same in UK SI 2016/1153, Schedule 1I";
    private const string Imperial = "UK SI 1986/1682, regulation 24";
    private const double Yard = 0.9144;
    private const double Inch = 0.0254;

    private static readonly TapeAccuracy s_one = new("class I", 0.1e-3, 0.1e-3, 0.1e-3, 1, Mid);
    private static readonly TapeAccuracy s_two = new("class II", 0.3e-3, 0.2e-3, 0.2e-3, 1, Mid);
    private static readonly TapeAccuracy s_three = new("class III", 0.6e-3, 0.4e-3, 0.3e-3, 1, Mid);

    /// <summary>The regulation for tapes divided in inches: ±(0.025 in + 0.015 in for each yard begun). It gives no figure for a hook.</summary>
    public static TapeAccuracy UkImperial1986 { get; } = new("UK 1986, inches", 0.025 * Inch, 0.015 * Inch / Yard, 0, Yard, Imperial);

    /// <summary>The same regulation for tapes divided in millimetres: ±(0.6 mm + 0.4 mm for each metre begun).</summary>
    public static TapeAccuracy UkMetric1986 { get; } = new("UK 1986, millimetres", 0.6e-3, 0.4e-3, 0, 1, Imperial);

    /// <summary>The prior standard deviation of the tape's zero error: a/√3, in metres (rectangular, JCGM 100:2008, 4.3.7).</summary>
    public double ZeroPriorMetres => FixedMetres / Math.Sqrt(3);

    /// <summary>The prior standard deviation of the tape's scale error: b/√3, in metres per metre.</summary>
    public double ScalePriorPerMetre => PerMetre / Math.Sqrt(3);

    /// <summary>The prior standard deviation of what a hook adds: c/√3, in metres.</summary>
    public double HookPriorMetres => HookMetres / Math.Sqrt(3);

    /// <summary>The promise of a class.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No member of the enumeration.</exception>
    public static TapeAccuracy OfClass(TapeClass tapeClass) =>
        tapeClass switch
        {
            TapeClass.I => s_one,
            TapeClass.II => s_two,
            TapeClass.III => s_three,
            _ => throw new ArgumentOutOfRangeException(nameof(tapeClass), tapeClass, "No such class."),
        };

    /// <summary>a + bL in metres, L rounded up to the next whole step, and c more when the length starts at the hook.</summary>
    /// <param name="lengthMetres">The length between the two marks; not negative.</param>
    /// <param name="fromHook">Whether it starts at the hook or the end of the tape.</param>
    public double MaximumPermissibleErrorMetres(double lengthMetres, bool fromHook = false)
    {
        Demand.NotNegative(lengthMetres);
        // Three metres computed as 3.0000000000000004 are not four begun.
        var steps = Math.Ceiling(lengthMetres / StepMetres - 1e-9);
        return FixedMetres + PerMetre * StepMetres * steps + (fromHook ? HookMetres : 0);
    }
}
