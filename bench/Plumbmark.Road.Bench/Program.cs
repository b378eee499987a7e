using System.Diagnostics;
using Plumbmark.Engine.Linkage;

// Positions per second of one front corner: each a different wheel height and a different place of the rack, as a curve or a simulation asks for them.
const int Positions = 2_000_000;
var drawn = new CornerPoints
{
    UpperFront = new(0.110, 0.330, 0.420),
    UpperRear = new(-0.130, 0.330, 0.410),
    LowerFront = new(0.160, 0.250, 0.190),
    LowerRear = new(-0.180, 0.250, 0.195),
    UpperJoint = new(-0.012, 0.560, 0.440),
    LowerJoint = new(0.008, 0.615, 0.170),
    TrackRodInner = new(-0.150, 0.240, 0.230),
    TrackRodOuter = new(-0.130, 0.590, 0.212),
    WheelCentre = new(0, 0.650, 0.310),
    SpinAxis = CornerPoints.SpinAxisOf(Math.PI / 180, 0.15 * Math.PI / 180),
};
var corner = Corner.Of(drawn);
Console.WriteLine("threads  positions/s  bytes allocated  sum of camber (must not change)");
foreach (var threads in new[] { 1, 1, 2 })
{
    var sums = new double[threads];
    var before = GC.GetTotalAllocatedBytes(precise: true);
    var clock = Stopwatch.StartNew();
    Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads }, t => sums[t] = Sweep(corner, drawn, t, threads));
    clock.Stop();
    var bytes = GC.GetTotalAllocatedBytes(precise: true) - before;
    Console.WriteLine($"{threads, 7}  {Positions / clock.Elapsed.TotalSeconds, 11:F0}  {bytes, 15}  {sums.Sum():F6}");
}

static double Sweep(Corner corner, CornerPoints drawn, int first, int step)
{
    var sum = 0.0;
    for (var i = first; i < Positions; i += step)
    {
        var travel = (0.12 * i / Positions) - 0.06;
        var rack = 0.02 * Math.Sin(i);
        corner.Solve(drawn.WheelCentre.Z + travel, drawn.TrackRodInner + (rack * Vector3.Left), out var state);
        sum += WheelAngles.Of(state).CamberRadians;
    }

    return sum;
}
