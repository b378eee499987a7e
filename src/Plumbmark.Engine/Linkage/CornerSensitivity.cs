namespace Plumbmark.Engine.Linkage;

/// <summary>
/// How each of a corner's angles and its wheel centre answer to a small change of each <see cref="CornerParameter"/>, the wheel-centre height held. Radians or metres per metre (per
/// radian for the two turns of the wheel axis).
/// </summary>
public sealed class CornerSensitivity
{
    /// <summary>How many parameters a row has.</summary>
    public const int ParameterCount = (int)CornerParameter.StubHeight + 1;

    private readonly double[] _camber;
    private readonly double[] _toeIn;
    private readonly double[] _castor;
    private readonly double[] _kingPin;
    private readonly double[] _wheelForward;
    private readonly double[] _wheelOutboard;

    internal CornerSensitivity(double[][] rows)
    {
        _camber = rows[0];
        _toeIn = rows[1];
        _castor = rows[2];
        _kingPin = rows[3];
        _wheelForward = rows[4];
        _wheelOutboard = rows[5];
    }

    /// <summary>Camber, radians per unit of each parameter.</summary>
    public ReadOnlySpan<double> Camber => _camber;

    /// <summary>Toe-in, radians per unit.</summary>
    public ReadOnlySpan<double> ToeIn => _toeIn;

    /// <summary>Castor, radians per unit.</summary>
    public ReadOnlySpan<double> Castor => _castor;

    /// <summary>King-pin inclination, radians per unit.</summary>
    public ReadOnlySpan<double> KingPin => _kingPin;

    /// <summary>Wheel centre forward, metres per unit: the wheelbase of this side.</summary>
    public ReadOnlySpan<double> WheelForward => _wheelForward;

    /// <summary>Wheel centre outboard, metres per unit: half the track.</summary>
    public ReadOnlySpan<double> WheelOutboard => _wheelOutboard;
}
