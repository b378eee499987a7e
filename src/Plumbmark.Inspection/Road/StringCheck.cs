using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// What two strings along the car tell: each wheel's toe-in to the car's centre line, with unequal tracks and strings that are not quite parallel. The centre line runs through the middles between the front
/// hubs and between the rear hubs, so it needs the hub distances and the wheelbase; toe of a pair together needs neither.
/// </summary>
/// <remarks>
/// In the axes of the strings' bisector: a string converging ahead by k/2 is itself toed in by k/2; the middle of a pair of hubs lies (h_R - h_L) / 2 to the left; the centre line leans to the left by p, the front
/// middle less the rear middle over the wheelbase. Toe-in to the centre line: left t + k/2 + p, right t + k/2 - p.
/// </remarks>
internal sealed class StringCheck
{
    private readonly Dictionary<WheelPlace, HalfTurns> _toes = [];
    private readonly Dictionary<WheelPlace, (double Hub, double U)> _hubs = [];

    private StringCheck() { }

    /// <summary>By how much the strings come together ahead, radians, and its uncertainty; zero with an allowance when they were not measured.</summary>
    public (double Value, double U) Convergence { get; private init; }

    /// <summary>Whether the strings' distance apart was measured.</summary>
    public bool StringsMeasured { get; private init; }

    /// <summary>The centre line's lean to the bisector, radians, positive to the left; null when hubs or wheelbase are not known.</summary>
    public (double Value, double U)? CentreLine { get; private set; }

    /// <summary>Brings the readings together.</summary>
    /// <param name="readings">Readings that stand.</param>
    /// <param name="wheelbaseMetres">The wheelbase, metres; null when not known.</param>
    public static StringCheck Of(IReadOnlyList<WheelReading> readings, double? wheelbaseMetres)
    {
        var strings = readings.OfType<WheelReading.Strings>().ToList();
        var check = new StringCheck { Convergence = ConvergenceOf(strings), StringsMeasured = strings.Count > 0 };
        foreach (var group in readings.OfType<WheelReading.StringGaps>().GroupBy(r => r.Wheel))
        {
            check._toes[group.Key] = HalfTurns.Of([.. group.Select(Toe)])!;
            var hubs = group.Where(r => r.Hub is not null).ToList();
            if (hubs.Count > 0)
            {
                var u = Math.Sqrt(hubs.Sum(h => Math.Pow(WheelCheckNumbers.Gap(h), 2))) / hubs.Count;
                check._hubs[group.Key] = (hubs.Average(h => h.Hub!.Value.Metres), u);
            }
        }

        check.CentreLine = check.CentreLineOf(wheelbaseMetres);
        return check;
    }

    /// <summary>One wheel's toe to its own string, half turns taken together; null when not read.</summary>
    public HalfTurns? ToeToString(WheelPlace wheel) => _toes.GetValueOrDefault(wheel);

    /// <summary>Toe-in of one wheel to the car's centre line; null when the strings do not tell.</summary>
    public (double Value, double U)? ToeToCentreLine(WheelPlace wheel)
    {
        if (ToeToString(wheel) is not { } toe || CentreLine is not { } line)
        {
            return null;
        }

        var sign = wheel is WheelPlace.FrontLeft or WheelPlace.RearLeft ? 1 : -1;
        var u = Math.Sqrt((toe.U * toe.U) + (0.25 * Convergence.U * Convergence.U) + (line.U * line.U));
        return (toe.Value + (0.5 * Convergence.Value) + (sign * line.Value), u);
    }

    /// <summary>Toe-in of a pair together; null when either wheel was not read. The centre line cancels.</summary>
    public (double Value, double U, IReadOnlyList<string> Readings)? TotalToe(WheelPlace left, WheelPlace right)
    {
        if (ToeToString(left) is not { } l || ToeToString(right) is not { } r)
        {
            return null;
        }

        var u = Math.Sqrt((l.U * l.U) + (r.U * r.U) + (Convergence.U * Convergence.U));
        return (l.Value + r.Value + Convergence.Value, u, [.. l.Readings, .. r.Readings]);
    }

    /// <summary>The rear wheels' common direction from the centre line, positive to the left; null when not told.</summary>
    public (double Value, double U, IReadOnlyList<string> Readings)? Thrust()
    {
        if (ToeToString(WheelPlace.RearLeft) is not { } l || ToeToString(WheelPlace.RearRight) is not { } r || CentreLine is not { } line)
        {
            return null;
        }

        // The strings' convergence cancels: both are toed in by the same half.
        var u = Math.Sqrt((0.25 * ((l.U * l.U) + (r.U * r.U))) + (line.U * line.U));
        return ((0.5 * (r.Value - l.Value)) - line.Value, u, [.. l.Readings, .. r.Readings]);
    }

    private static HalfTurns.One Toe(WheelReading.StringGaps r)
    {
        var span = r.Span.Metres;
        var value = RimReading.ToeInToString(r.Front.Metres, r.Rear.Metres, span);
        return new(r.Id, r.HalfTurn, value, WheelCheckNumbers.Gap(r) * Math.Sqrt(2) / (span * Math.Cos(value)), span);
    }

    // Strings set parallel by eye and never measured: a couple of millimetres over a car's length.
    private const double UnmeasuredConvergence = 2e-3 / 3;

    private static (double Value, double U) ConvergenceOf(List<WheelReading.Strings> strings) =>
        strings.Count == 0
            ? (0, UnmeasuredConvergence)
            : (
                strings.Average(s => Math.Atan2(s.Behind.Metres - s.Ahead.Metres, s.Between.Metres)),
                Math.Sqrt(strings.Sum(s => Math.Pow(WheelCheckNumbers.Gap(s) * Math.Sqrt(2) / s.Between.Metres, 2))) / strings.Count
            );

    private (double Value, double U)? CentreLineOf(double? wheelbaseMetres)
    {
        if (wheelbaseMetres is not { } wheelbase || MiddleOf(WheelPlace.FrontLeft, WheelPlace.FrontRight) is not { } front)
        {
            return null;
        }

        if (MiddleOf(WheelPlace.RearLeft, WheelPlace.RearRight) is not { } rear)
        {
            return null;
        }

        return (Math.Atan2(front.Value - rear.Value, wheelbase), Math.Sqrt((front.U * front.U) + (rear.U * rear.U)) / wheelbase);
    }

    private (double Value, double U)? MiddleOf(WheelPlace left, WheelPlace right) =>
        _hubs.TryGetValue(left, out var l) && _hubs.TryGetValue(right, out var r)
            ? (0.5 * (r.Hub - l.Hub), 0.5 * Math.Sqrt((l.U * l.U) + (r.U * r.U)))
            : null;
}
