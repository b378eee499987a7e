using Plumbmark.Engine.Bending;

namespace Plumbmark.Simulations;

/// <summary>The simulated part: slices along both arms, bent by an accident and then by the ram, with rubbing supports and blocks that give.</summary>
internal sealed class PressBar
{
    private const int SlicesPerArm = 12;
    private const double StepShare = 0.12; // of the curvature at first yield

    private PressSlice[] _slices;
    private readonly double[] _station; // from the ram, negative to the left, m
    private readonly double[] _weight; // length each slice stands for, m
    private readonly double _left;
    private readonly double _right;
    private readonly double _momentScale;
    private readonly double _yieldCurvature;

    public PressBar(CrossSection section, PressMetal metal, double leftArm, double rightArm)
    {
        (_left, _right) = (leftArm, rightArm);
        _yieldCurvature = metal.Yield / metal.Modulus / (section.DepthMetres / 2);
        _momentScale = metal.Yield * section.ElasticModulusCubicMetres;
        var stations = new List<(double At, double Weight)>();
        foreach (var (arm, side) in ((double, int)[])[(leftArm, -1), (rightArm, 1)])
        {
            for (var i = 0; i < SlicesPerArm; i++)
            {
                // Slices crowd towards the ram as t², where the metal yields.
                var (t0, t1) = ((double)i / SlicesPerArm, (i + 1.0) / SlicesPerArm);
                stations.Add((side * arm * ((t0 * t0) + (t1 * t1)) / 2, arm * ((t1 * t1) - (t0 * t0))));
            }
        }

        _station = [.. stations.Select(s => s.At)];
        _weight = [.. stations.Select(s => s.Weight)];
        _slices = [.. stations.Select(_ => new PressSlice(section, metal))];
        HalfDepth = section.CentroidMetres - section.BottomMetres;
    }

    public double HalfDepth { get; }

    /// <summary>The same part in the same state, to be treated differently from here on.</summary>
    public PressBar Copy()
    {
        var copy = (PressBar)MemberwiseClone();
        copy._slices = Array.ConvertAll(_slices, s => s.Copy());
        return copy;
    }

    /// <summary>How far the middle stands from the chord through the supports, m; negative is the bend that the accident left.</summary>
    public double Deflection
    {
        get
        {
            double sum = 0;
            for (var i = 0; i < _slices.Length; i++)
            {
                sum += _slices[i].Curvature * Dummy(_station[i]) * _weight[i];
            }

            return sum;
        }
    }

    /// <summary>Largest strain that any outer fibre has been through, without sign.</summary>
    public double PlasticPath => _slices.Max(s => s.PlasticPath);

    /// <summary>Bends the part the wrong way with longer arms and a load beside the ram, until it stays bent by an amount under the ram.</summary>
    public void Accident(double setUnderRam, double armFactor, double offset)
    {
        var peak = 0.9 * _momentScale;
        while (-Deflection < setUnderRam)
        {
            // Up a little further, off again, look: the state keeps everything.
            peak += 0.03 * _momentScale;
            var top = peak;
            LoadTo(i => -top * AccidentShape(_station[i] - offset, armFactor), 4);
            LoadTo(_ => 0, 2);
        }
    }

    /// <summary>Presses until the ram has travelled, then lets go; returns the largest load, N.</summary>
    public double Press(double travel, double friction, double blockGive)
    {
        var start = Deflection;
        var (load, step) = (0.0, StepShare * _yieldCurvature);
        var (control, sign) = (_slices[0], 1.0);
        for (var i = 0; i < 4000; i++)
        {
            var next = Advance(control, control.Curvature + (sign * step), friction);
            var reached = TrialDeflection() - start + (next * blockGive);
            if (reached >= travel)
            {
                if (step < 1e-4 * _yieldCurvature)
                {
                    break;
                }

                step /= 2;
                continue;
            }

            Array.ForEach(_slices, s => s.Keep());
            load = Math.Max(load, next);
        }

        LoadTo(_ => 0, 3);
        return load;
    }

    private double Advance(PressSlice control, double curvature, double friction)
    {
        var moment = control.TryCurvature(curvature);
        var load = moment / LoadedShape(0, friction);
        for (var i = 1; i < _slices.Length; i++)
        {
            _slices[i].TryMoment(load * LoadedShape(i, friction), _momentScale);
        }

        return load;
    }

    private double TrialDeflection()
    {
        double sum = 0;
        for (var i = 0; i < _slices.Length; i++)
        {
            sum += _slices[i].TrialCurvature * Dummy(_station[i]) * _weight[i];
        }

        return sum;
    }

    private void LoadTo(Func<int, double> moment, int steps)
    {
        var before = Array.ConvertAll(_slices, s => s.TryCurvature(s.Curvature));

        for (var k = 1; k <= steps; k++)
        {
            for (var i = 0; i < _slices.Length; i++)
            {
                _slices[i].TryMoment(before[i] + ((moment(i) - before[i]) * k / steps), _momentScale);
                _slices[i].Keep();
            }
        }
    }

    // Moment per newton of ram load: the triangle, less what friction at the lower face of the supports takes off along the whole arm.
    private double LoadedShape(int i, double friction)
    {
        var reaction = _station[i] < 0 ? _right / (_left + _right) : _left / (_left + _right);
        return Dummy(_station[i]) - (friction * reaction * HalfDepth);
    }

    private double Dummy(double station) =>
        station < 0 ? (_left + station) * _right / (_left + _right) : (_right - station) * _left / (_left + _right);

    private double AccidentShape(double station, double armFactor) =>
        Math.Max(0, 1 - (Math.Abs(station) / (armFactor * (station < 0 ? _left : _right))));
}
