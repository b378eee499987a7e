using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>What the readings at the wheels say after assembly: camber, castor, toe, thrust line, wheelbase and ride height, each with its uncertainty and its verdict against the book.</summary>
internal sealed class WheelCheck
{
    private static readonly WheelPlace[] s_wheels = Enum.GetValues<WheelPlace>();
    private readonly RoadSection _section;
    private readonly RoadDisplay _display;
    private readonly List<WheelReading> _readings;
    private readonly List<WheelResult> _results = [];
    private readonly List<string> _remarks = [];

    private WheelCheck(RoadSection section, RoadDisplay display)
    {
        (_section, _display) = (section, display);
        _readings = [.. section.Wheels.Where(w => w.Withdrawn is null)];
    }

    /// <summary>The results of a section's readings, with remarks on the check as a whole.</summary>
    public static (IReadOnlyList<WheelResult> Results, IReadOnlyList<string> Remarks) Of(RoadSection section, RoadDisplay display)
    {
        var check = new WheelCheck(section, display);
        check.AddCamber();
        check.AddCastor();
        check.AddToe();
        check.AddStrings();
        check.AddWheelbase();
        check.AddRideHeights();
        return (check._results, check._remarks);
    }

    private void AddCamber()
    {
        foreach (var wheel in s_wheels)
        {
            var plumb = _readings.OfType<WheelReading.PlumbLine>().Where(r => r.Wheel == wheel).Select(OfPlumbLine);
            var level = _readings
                .OfType<WheelReading.Level>()
                .Where(r => r.Wheel == wheel)
                .Select(r => new HalfTurns.One(
                    r.Id,
                    r.HalfTurn,
                    r.Camber.Radians,
                    WheelCheckNumbers.Level(r),
                    WheelCheckNumbers.RimMetres
                ));
            if (HalfTurns.Of([.. plumb, .. level]) is { } camber)
            {
                var (lean, u) = LeanOf(wheel);
                var kind = wheel is WheelPlace.FrontLeft or WheelPlace.FrontRight ? FigureKind.Camber : FigureKind.RearCamber;
                Add(
                    kind,
                    wheel,
                    null,
                    null,
                    camber.Value + lean,
                    Math.Sqrt((camber.U * camber.U) + (u * u)),
                    camber.Readings,
                    RunOut(camber)
                );
            }
        }

        AddSplit(FigureKind.Camber, FigureKind.CamberSplit);
    }

    private static HalfTurns.One OfPlumbLine(WheelReading.PlumbLine r)
    {
        var value = RimReading.Camber(r.Top.Metres, r.Bottom.Metres, r.Span.Metres);
        var u = WheelCheckNumbers.Gap(r) * Math.Sqrt(2) / (r.Span.Metres * Math.Cos(value));
        return new(r.Id, r.HalfTurn, value, u, r.Span.Metres);
    }

    // A pad that stands higher leans the whole axle toward the other side: that wheel reads less camber than it has, the other more.
    private (double Lean, double U) LeanOf(WheelPlace wheel)
    {
        var isFront = wheel is WheelPlace.FrontLeft or WheelPlace.FrontRight;
        var (left, right) = isFront ? (WheelPlace.FrontLeft, WheelPlace.FrontRight) : (WheelPlace.RearLeft, WheelPlace.RearRight);
        var pads = _readings.OfType<WheelReading.Pad>().ToList();
        if (pads.LastOrDefault(p => p.Wheel == left) is not { } l || pads.LastOrDefault(p => p.Wheel == right) is not { } r)
        {
            Remark(
                "The pads under the wheels were not levelled or not read: a floor that falls leans every camber alike, one side up, the other down."
            );
            return (0, 0);
        }

        if (TrackOf(isFront) is not { } track)
        {
            Remark("The pads were read, but the track is not told, so camber cannot be corrected for them.");
            return (0, 0);
        }

        var lean = Math.Atan2(l.Value.Metres - r.Value.Metres, track);
        var u = Math.Sqrt(Math.Pow(WheelCheckNumbers.Gap(l), 2) + Math.Pow(WheelCheckNumbers.Gap(r), 2)) / track;
        return (wheel == left ? lean : -lean, u);
    }

    private double? TrackOf(bool isFront) =>
        BookLength(isFront ? FigureKind.FrontTrack : FigureKind.RearTrack)
        ?? (isFront ? 2 * _section.Front?.WheelCentre?.Y?.Metres : (_section.Rear as RearDrawing.LiveAxle)?.Track?.Metres);

    private double? BookLength(FigureKind kind) => _section.Book.FirstOrDefault(b => b.Kind == kind)?.AimSi;

    private void AddCastor()
    {
        foreach (var group in _readings.OfType<WheelReading.Swing>().GroupBy(r => r.Wheel).OrderBy(g => g.Key))
        {
            var readings = group.ToList();
            var (castor, u) = Mean(readings, s => s.Exact().CastorRadians);
            var (kingPin, uKingPin) = Mean(readings, s => s.Exact().KingPinRadians);
            var shortForm = readings.Average(r => SwingOf(r).ByShortForm());
            IReadOnlyList<string> remarks =
                Math.Abs(shortForm - castor) > 0.5 * Math.PI / 180 / 60
                    ?
                    [
                        $"The short form (camber difference over the turn in degrees) would say {RoadDisplay.Signed(shortForm)}: it is two per cent low.",
                    ]
                    : [];
            var ids = readings.Select(r => r.Id).ToList();
            Add(FigureKind.Castor, group.Key, null, null, castor, u, ids, remarks);
            Add(
                FigureKind.KingPin,
                group.Key,
                null,
                null,
                kingPin,
                uKingPin,
                ids,
                ["King-pin inclination comes from the bow of the curve, so it is far less sure than castor."]
            );
        }

        AddSplit(FigureKind.Castor, FigureKind.CastorSplit);
    }

    private static CastorSwing SwingOf(WheelReading.Swing r) =>
        new(r.Ahead.Radians, r.OutTurn.Radians, r.OutCamber.Radians, r.InTurn.Radians, r.InCamber.Radians);

    private static (double Value, double U) Mean(List<WheelReading.Swing> readings, Func<CastorSwing, double> of)
    {
        var variance = 0.0;
        foreach (var r in readings)
        {
            var (swing, level) = (SwingOf(r), WheelCheckNumbers.Level(r));
            variance += Square(of(swing with { AheadCamberRadians = swing.AheadCamberRadians + level }) - of(swing));
            variance += Square(of(swing with { OutCamberRadians = swing.OutCamberRadians + level }) - of(swing));
            variance += Square(of(swing with { InCamberRadians = swing.InCamberRadians + level }) - of(swing));
            variance += Square(of(swing with { OutTurnRadians = swing.OutTurnRadians + WheelCheckNumbers.TurnRadians }) - of(swing));
            variance += Square(of(swing with { InTurnRadians = swing.InTurnRadians + WheelCheckNumbers.TurnRadians }) - of(swing));
        }

        return (readings.Average(r => of(SwingOf(r))), Math.Sqrt(variance) / readings.Count);
    }

    private void AddToe()
    {
        foreach (var axle in Enum.GetValues<Axle>())
        {
            var readings = _readings.OfType<WheelReading.Across>().Where(r => r.Axle == axle).Select(OfAcross).ToList();
            if (HalfTurns.Of(readings) is { } toe)
            {
                Add(
                    axle == Axle.Front ? FigureKind.ToeIn : FigureKind.RearToeIn,
                    null,
                    null,
                    axle,
                    toe.Value,
                    toe.U,
                    toe.Readings,
                    [.. RunOut(toe), .. AtRim(toe.Value)]
                );
            }
        }
    }

    private static HalfTurns.One OfAcross(WheelReading.Across r)
    {
        var diameter = r.Diameter.Metres;
        var value = RimReading.TotalToeIn(r.Behind.Metres - r.Ahead.Metres, diameter);
        return new(r.Id, r.HalfTurn, value, WheelCheckNumbers.Gap(r) * Math.Sqrt(2) / diameter, diameter);
    }

    private IEnumerable<string> AtRim(double totalToe) => _display.ToeAtRim(totalToe) is { } said ? [$"That is {said}."] : [];

    private void AddStrings()
    {
        var check = StringCheck.Of(_readings, WheelbaseMetres());
        foreach (var wheel in s_wheels)
        {
            if (check.ToeToString(wheel) is { } toe && check.ToeToCentreLine(wheel) is { } toCentre)
            {
                Add(
                    IsFront(wheel) ? FigureKind.ToeIn : FigureKind.RearToeIn,
                    wheel,
                    null,
                    null,
                    toCentre.Value,
                    toCentre.U,
                    toe.Readings,
                    RunOut(toe)
                );
            }
            else if (check.ToeToString(wheel) is not null)
            {
                Remark(
                    "The strings tell each wheel's toe to the centre line only with the hub distances of all four wheels and the wheelbase."
                );
            }
        }

        AddPair(check.TotalToe(WheelPlace.FrontLeft, WheelPlace.FrontRight), FigureKind.ToeIn, Axle.Front);
        AddPair(check.TotalToe(WheelPlace.RearLeft, WheelPlace.RearRight), FigureKind.RearToeIn, Axle.Rear);
        if (check.Thrust() is { } thrust)
        {
            Add(FigureKind.Thrust, null, null, null, thrust.Value, thrust.U, thrust.Readings, []);
        }

        if (!check.StringsMeasured && _readings.OfType<WheelReading.StringGaps>().Any())
        {
            Remark("The strings' distance apart ahead and behind was not measured; they are taken as parallel to a couple of millimetres.");
        }
    }

    private void AddPair((double Value, double U, IReadOnlyList<string> Readings)? pair, FigureKind kind, Axle axle)
    {
        if (pair is { } toe)
        {
            Add(kind, null, null, axle, toe.Value, toe.U, toe.Readings, AtRim(toe.Value));
        }
    }

    private double? WheelbaseMetres()
    {
        var read = _readings.OfType<WheelReading.Wheelbase>().Select(r => r.Value.Metres).ToList();
        return read.Count > 0 ? read.Average() : BookLength(FigureKind.Wheelbase);
    }

    private void AddWheelbase()
    {
        var sides = _readings.OfType<WheelReading.Wheelbase>().GroupBy(r => r.Side).ToDictionary(g => g.Key, g => g.ToList());
        foreach (var (side, readings) in sides.OrderBy(s => s.Key))
        {
            var (value, u) = MeanOf([.. readings.Select(r => (r.Value.Metres, r.Sigma?.Metres ?? WheelCheckNumbers.WheelbaseMetres))]);
            Add(FigureKind.Wheelbase, null, side, null, value, u, [.. readings.Select(r => r.Id)], []);
        }

        AddSplit(FigureKind.Wheelbase, FigureKind.WheelbaseSplit);
    }

    private void AddRideHeights()
    {
        var heights = _readings
            .OfType<WheelReading.RideHeight>()
            .GroupBy(r => r.Wheel)
            .ToDictionary(
                g => g.Key,
                g => (Mean: MeanOf([.. g.Select(r => (r.Value.Metres, WheelCheckNumbers.Gap(r)))]), Ids: g.Select(r => r.Id).ToList())
            );
        foreach (
            var (left, right, axle) in new[]
            {
                (WheelPlace.FrontLeft, WheelPlace.FrontRight, Axle.Front),
                (WheelPlace.RearLeft, WheelPlace.RearRight, Axle.Rear),
            }
        )
        {
            if (heights.TryGetValue(left, out var l) && heights.TryGetValue(right, out var r))
            {
                var u = Math.Sqrt(Square(l.Mean.U) + Square(r.Mean.U));
                Add(FigureKind.RideHeightSplit, null, null, axle, l.Mean.Value - r.Mean.Value, u, [.. l.Ids, .. r.Ids], []);
            }
        }
    }

    private void AddSplit(FigureKind kind, FigureKind split)
    {
        bool IsLeft(WheelResult r) => r.Wheel == WheelPlace.FrontLeft || (r.Wheel is null && r.Side == Side.Left);
        bool IsRight(WheelResult r) => r.Wheel == WheelPlace.FrontRight || (r.Wheel is null && r.Side == Side.Right);
        var own = _results.Where(r => r.Kind == kind).ToList();
        if (own.FirstOrDefault(IsLeft) is { } l && own.FirstOrDefault(IsRight) is { } r)
        {
            Add(split, null, null, null, l.Value - r.Value, Math.Sqrt(Square(l.U) + Square(r.U)), [.. l.Readings, .. r.Readings], []);
        }
    }

    private static IReadOnlyList<string> RunOut(HalfTurns angle) =>
        angle.RunOut is { } runOut
            ? [$"The rim's own run-out, {RoadDisplay.Size(runOut)}, is taken out by the half turn."]
            : ["Read in one position only: the rim's run-out is still in it. Roll the car half a wheel's turn and read again."];

    private static (double Value, double U) MeanOf(IReadOnlyList<(double Value, double U)> readings) =>
        (readings.Average(r => r.Value), Math.Sqrt(readings.Sum(r => r.U * r.U)) / readings.Count);

    private static bool IsFront(WheelPlace wheel) => wheel is WheelPlace.FrontLeft or WheelPlace.FrontRight;

    private static double Square(double x) => x * x;

    private void Remark(string sentence)
    {
        if (!_remarks.Contains(sentence))
        {
            _remarks.Add(sentence);
        }
    }

    private void Add(
        FigureKind kind,
        WheelPlace? wheel,
        Side? side,
        Axle? axle,
        double value,
        double u,
        IReadOnlyList<string> readings,
        IEnumerable<string> remarks
    )
    {
        // Toe is asked of a pair together, never of one wheel.
        var isOneWheelsToe = kind is FigureKind.ToeIn or FigureKind.RearToeIn && wheel is not null;
        var book = isOneWheelsToe ? null : _section.Book.FirstOrDefault(b => b.Kind == kind);
        var within = RoadFigures.Within(book, value, u);
        _results.Add(
            new(kind, wheel, side, axle, value, u, book, within, within is { } p ? RoadFigures.VerdictOf(p) : null, readings, [.. remarks])
        );
    }
}
