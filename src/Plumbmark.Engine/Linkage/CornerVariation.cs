namespace Plumbmark.Engine.Linkage;

/// <summary>
/// A corner that differs from its drawing by given amounts of each <see cref="CornerParameter"/>, and how its angles answer to further change: measured minus nominal goes in, angles come out.
/// </summary>
public sealed partial class CornerVariation
{
    private readonly double[] _amounts;

    private CornerVariation(CornerPoints drawn, ReadOnlySpan<double> amounts)
    {
        Drawn = drawn;
        _amounts = amounts.ToArray();
        var frame = CornerFrame.Of(drawn);
        var moved = new CornerFrame(
            frame.UpperFront + Displacement(CornerParameter.UpperFrontX),
            frame.UpperRear + Displacement(CornerParameter.UpperRearX),
            frame.LowerFront + Displacement(CornerParameter.LowerFrontX),
            frame.LowerRear + Displacement(CornerParameter.LowerRearX),
            frame.TrackRodInner + Displacement(CornerParameter.TrackRodInnerX)
        );
        Corner = new(moved, Parts());
    }

    /// <summary>The drawing that the amounts are counted from.</summary>
    public CornerPoints Drawn { get; }

    /// <summary>The corner as it is.</summary>
    public Corner Corner { get; }

    /// <summary>The amounts, one per parameter, metres (radians for the two turns of the wheel axis).</summary>
    public ReadOnlySpan<double> Amounts => _amounts;

    /// <summary>The corner with every parameter changed by its amount.</summary>
    /// <param name="drawn">The drawing; the places on the upright are changed in this position.</param>
    /// <param name="amounts">One amount per parameter, metres (radians for the two turns of the wheel axis).</param>
    public static CornerVariation Of(CornerPoints drawn, ReadOnlySpan<double> amounts)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        if (amounts.Length != CornerSensitivity.ParameterCount)
        {
            throw new ArgumentException($"One amount for each of {CornerSensitivity.ParameterCount} parameters.", nameof(amounts));
        }

        return new(drawn, amounts);
    }

    private CornerParts Parts()
    {
        var parts = CornerParts.Of(Drawn);
        var camber = Math.Asin(-Drawn.SpinAxis.Z) + Amount(CornerParameter.StubCamber);
        var toeIn = Math.Atan2(Drawn.SpinAxis.X, Drawn.SpinAxis.Y) + Amount(CornerParameter.StubToeIn);
        var upright = UprightShape.Between(
            Drawn with
            {
                TrackRodOuter = LeverAsMade,
                SpinAxis = CornerPoints.SpinAxisOf(camber, toeIn),
                WheelCentre = Drawn.WheelCentre + (Amount(CornerParameter.StubHeight) * Vector3.Up),
            }
        );
        return parts with
        {
            Upper = parts.Upper.Changed(Amount(CornerParameter.UpperArmFirst), Amount(CornerParameter.UpperArmSecond)),
            Lower = parts.Lower.Changed(Amount(CornerParameter.LowerArmFirst), Amount(CornerParameter.LowerArmSecond)),
            Upright = upright with { SpanMetres = upright.SpanMetres + Amount(CornerParameter.UprightSpan) },
            TrackRodMetres = parts.TrackRodMetres + Amount(CornerParameter.TrackRodLength),
        };
    }

    private Vector3 LeverAsMade => Drawn.TrackRodOuter + Displacement(CornerParameter.LeverX);

    private double Amount(CornerParameter parameter) => _amounts[(int)parameter];

    private Vector3 Displacement(CornerParameter x) => new(_amounts[(int)x], _amounts[(int)x + 1], _amounts[(int)x + 2]);
}
