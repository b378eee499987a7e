using BenchmarkDotNet.Attributes;
using Plumbmark.Engine;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Engine.Bending;
using Plumbmark.Engine.Fits;
using Plumbmark.Engine.Linkage;

namespace Plumbmark.Benchmarks;

/// <summary>Every kernel by itself, with what it allocates.</summary>
[MemoryDiagnoser]
public class Kernels
{
    private readonly Network _frame = Problems.Frame(60, 400);
    private readonly Network _small = Problems.Frame(8, 36);
    private readonly Network _hall = Problems.Hall(100, 10, 6000);
    private readonly NetworkFit _fit = NetworkAdjustment.Solve(Problems.Frame(60, 400)).FitOrNull!;
    private readonly NetworkFit _less;
    private readonly Observation _last;
    private readonly NetworkFit _spoilt = NetworkAdjustment.Solve(Problems.WithAnInch(Problems.Frame(60, 400), 200)).FitOrNull!;
    private readonly (NetworkDesign Design, List<Observation> Candidates) _plan = Problems.Plan();
    private readonly Vector3[] _plate = Problems.Plate(1000);
    private readonly Corner _corner = Corner.Of(Problems.Corner);
    private readonly (BiteBelief Belief, ObservedBite Bite) _press = Problems.Press();
    private double _height = 0.31;

    public Kernels()
    {
        _last = _frame.Observations[^1];
        _less = NetworkAdjustment.Solve(_frame.Without(_last.Id)).FitOrNull!;
    }

    [Benchmark]
    public object FrameOf60Points() => NetworkAdjustment.Solve(_frame);

    [Benchmark]
    public object FrameOf8Points() => NetworkAdjustment.Solve(_small);

    [Benchmark]
    public object HallOf1000Points() => NetworkAdjustment.Solve(_hall);

    [Benchmark]
    public object OneReadingMore() => NetworkAdjustment.Add(_less, _last);

    [Benchmark]
    public object SingleAlternatives() => SingleSlips.Of(_fit);

    [Benchmark]
    public object BlunderNamed() => BlunderSearch.Of(_spoilt);

    [Benchmark]
    public object GreedyPlan() => Greedy.Choose(_plan.Design, _plan.Candidates, 30);

    [Benchmark]
    public object PlaneMinimumZone() => MinimumZone.Plane(_plate);

    [Benchmark]
    public object PlaneLeastSquares() => BestFit.Plane(_plate);

    [Benchmark]
    public double WishbonePosition()
    {
        _height = _height > 0.36 ? 0.26 : _height + 1e-6;
        _corner.Solve(_height, Problems.Corner.TrackRodInner, out var state);
        return WheelAngles.Of(state).CamberRadians;
    }

    [Benchmark]
    public object PressLogUpdate() => NextTravel.From(_press.Belief.After(_press.Bite), 1e-3, hasSet: true);
}
