using Plumbmark.Engine.Bending;

namespace Plumbmark.Simulations;

/// <summary>One cross-section of the simulated part as fibres that remember.</summary>
internal sealed class PressSlice
{
    public const int Fibres = 40;
    private const int Iterations = 60;

    private readonly PressMetal _metal;
    private readonly double[] _height;
    private readonly double[] _area;
    private PressFibre[] _state = new PressFibre[Fibres];
    private PressFibre[] _trial = new PressFibre[Fibres];
    private double _axial;
    private double _trialAxial;

    public PressSlice(CrossSection section, PressMetal metal)
    {
        _metal = metal;
        (_height, _area) = (new double[Fibres], new double[Fibres]);
        for (var i = 0; i < Fibres; i++)
        {
            var low = section.Below(section.BottomMetres + (section.DepthMetres * i / Fibres));
            var high = section.Below(section.BottomMetres + (section.DepthMetres * (i + 1) / Fibres));
            (_area[i], _height[i]) = (high.Area - low.Area, ((high.First - low.First) / (high.Area - low.Area)) - section.CentroidMetres);
        }
    }

    /// <summary>The same slice in the same state, to be treated differently from here on.</summary>
    public PressSlice Copy()
    {
        var copy = (PressSlice)MemberwiseClone();
        (copy._state, copy._trial) = ((PressFibre[])_state.Clone(), new PressFibre[Fibres]);
        return copy;
    }

    /// <summary>Curvature now, 1/m.</summary>
    public double Curvature { get; private set; }

    /// <summary>Curvature of the last trial, 1/m.</summary>
    public double TrialCurvature { get; private set; }

    /// <summary>Largest strain of the outer fibres that has stayed, over all time.</summary>
    public double PlasticPath => Math.Max(_state[0].Plastic, _state[^1].Plastic);

    /// <summary>The moment at a curvature, from the state as it stands.</summary>
    public double TryCurvature(double curvature)
    {
        TrialCurvature = curvature;
        _trialAxial = _axial;
        for (var i = 0; ; i++)
        {
            var (force, moment, stiffness, _, _) = Sum(curvature, _trialAxial);
            if (i == Iterations || Math.Abs(force) < 1e-7 * Math.Max(1, Math.Abs(stiffness) * 1e-3))
            {
                return moment;
            }

            _trialAxial -= force / stiffness;
        }
    }

    /// <summary>The curvature that carries a moment, from the state as it stands.</summary>
    public void TryMoment(double wanted, double scale)
    {
        (TrialCurvature, _trialAxial) = (Curvature, _axial);
        var longest = 2 * _metal.Yield / _metal.Modulus / (_height[^1] - _height[0]); // a Newton step never turns further than half the yield curvature
        for (var i = 0; i < Iterations; i++)
        {
            var (force, moment, ea, es, ei) = Sum(TrialCurvature, _trialAxial);
            var gap = wanted - moment;
            if (Math.Abs(gap) < 1e-9 * scale && Math.Abs(force) < 1e-7 * ea * 1e-3)
            {
                return;
            }

            // ΔN = EA·Δε + ES·Δκ = −N and ΔM = ES·Δε + EI·Δκ = gap
            var determinant = (ea * ei) - (es * es);
            var (stretch, turn) = (((-force * ei) - (gap * es)) / determinant, ((gap * ea) + (force * es)) / determinant);
            var share = Math.Min(1, longest / Math.Max(1e-30, Math.Abs(turn)));
            _trialAxial += share * stretch;
            TrialCurvature += share * turn;
        }
    }

    /// <summary>Makes the last trial the state.</summary>
    public void Keep()
    {
        (_state, _trial) = (_trial, _state);
        (Curvature, _axial) = (TrialCurvature, _trialAxial);
    }

    private (double Force, double Moment, double Ea, double Es, double Ei) Sum(double curvature, double axial)
    {
        double force = 0,
            moment = 0,
            ea = 0,
            es = 0,
            ei = 0;
        for (var i = 0; i < Fibres; i++)
        {
            var stress = _metal.Stress(_state[i], axial + (curvature * _height[i]), out var tangent, out _trial[i]);
            var (f, t) = (stress * _area[i], tangent * _area[i]);
            force += f;
            moment += f * _height[i];
            ea += t;
            es += t * _height[i];
            ei += t * _height[i] * _height[i];
        }

        return (force, moment, ea, es, ei);
    }
}
