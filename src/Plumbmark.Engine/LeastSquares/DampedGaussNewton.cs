namespace Plumbmark.Engine.LeastSquares;

/// <summary>Gauss-Newton with Levenberg-Marquardt damping: from a start, however poor, to the nearest minimum of a sum of squares.</summary>
/// <remarks>
/// The damping falls by 1 / max(1/3, 1 − (2ρ − 1)³) after a step that kept its promise to the share ρ, and rises by 2, 4, 8 … while steps
/// fail: Nielsen, Damping Parameter in Marquardt's Method, IMM-REP-1999-05, eq. (2.5). Columns are scaled by the largest norm each has
/// shown so far: Moré 1978, The Levenberg-Marquardt algorithm, section 6 (both from memory). Where the promised gain drowns in rounding, plain
/// Gauss-Newton steps polish the result for as long as the gradient keeps falling.
/// </remarks>
internal sealed class DampedGaussNewton(IDampedModel model, SolveOptions options)
{
    private const double LeastShareKept = 1e-3;
    private const double LargestDamping = 1e32;

    // Below this share of the sum of squares a gain cannot be told from rounding.
    private const double RoundingShare = 1e-12;

    // At a minimum the free step promises next to nothing, and among residuals of mere rounding it is short. If it promises this share, would
    // move the unknowns by more than they are, and does not keep its promise, the place is flat, not lowest.
    private const double PlateauShare = 1e-4;

    private readonly List<IterationRecord> _log = [];
    private double[] _x = [];
    private double _sum;

    /// <summary>Iterates from a start; the array is replaced by the place where it stopped.</summary>
    public SolveSummary Run(double[] x)
    {
        _x = x;
        _sum = model.SumOfSquares(x);
        var reason = double.IsFinite(_sum) ? Iterate() : StopReason.StartNotFinite;
        return new SolveSummary(reason, _sum, _log);
    }

    private StopReason Iterate()
    {
        var (damping, growth) = (options.InitialDamping, 2.0);
        var step = new double[_x.Length];
        var trial = new double[_x.Length];
        var state = model.Linearise(_x);
        for (var number = 1; number <= options.MaximumIterations; number++)
        {
            if (!(_sum > 0))
            {
                return StopReason.ResidualsVanished;
            }

            if (state.GradientCosine <= options.GradientTolerance)
            {
                return StopReason.GradientVanished;
            }

            var isSolved = model.TryStep(damping, step, out var forecast);
            if (isSolved && forecast.Reduction <= RoundingShare * _sum)
            {
                return Polish(state, number);
            }

            var trialSum = isSolved ? SumAt(step, trial) : double.NaN;
            var share = (_sum - trialSum) / forecast.Reduction;
            var isAccepted = share > LeastShareKept;
            _log.Add(new(number, isAccepted ? trialSum : _sum, state.GradientCosine, forecast.ScaledNorm, damping, isAccepted));
            if (isAccepted)
            {
                Take(trial, trialSum);
                damping *= Math.Max(1.0 / 3.0, 1 - Math.Pow(2 * share - 1, 3));
                growth = 2;
                if (forecast.ScaledNorm <= options.StepTolerance * state.ScaledSize)
                {
                    return StopReason.StepVanished;
                }

                state = model.Linearise(_x);
            }
            else
            {
                damping = Math.Max(damping, 1e-12) * growth;
                growth *= 2;
                if (damping > LargestDamping)
                {
                    return StopReason.NoFurtherDescent;
                }
            }
        }

        return StopReason.IterationLimit;
    }

    private StopReason Polish(Linearisation state, int number)
    {
        // Where the residuals are large and bent, Gauss-Newton gains only part of a digit with each step (NIST's ENSO).
        const int EnoughSteps = 100;
        var step = new double[_x.Length];
        var trial = new double[_x.Length];
        var last = double.PositiveInfinity;
        for (var k = 0; k < EnoughSteps; k++)
        {
            if (state.GradientCosine <= options.GradientTolerance)
            {
                return StopReason.GradientVanished;
            }

            if (!model.TryPolishingStep(step, out var forecast) || !(forecast.ScaledNorm < 0.9 * last))
            {
                return StopReason.NoFurtherDescent;
            }

            var trialSum = SumAt(step, trial);
            var isAccepted = trialSum <= _sum * (1 + RoundingShare);
            _log.Add(new(number + k, isAccepted ? trialSum : _sum, state.GradientCosine, forecast.ScaledNorm, 0, isAccepted));
            if (!isAccepted)
            {
                var isFlat = forecast.Reduction > PlateauShare * _sum && forecast.ScaledNorm > state.ScaledSize;
                return isFlat ? StopReason.Plateau : StopReason.NoFurtherDescent;
            }

            Take(trial, trialSum);
            if (forecast.ScaledNorm <= options.StepTolerance * state.ScaledSize)
            {
                return StopReason.StepVanished;
            }

            last = forecast.ScaledNorm;
            state = model.Linearise(_x);
        }

        return StopReason.NoFurtherDescent;
    }

    private double SumAt(double[] step, double[] trial)
    {
        for (var i = 0; i < trial.Length; i++)
        {
            trial[i] = _x[i] + step[i];
        }

        return model.SumOfSquares(trial);
    }

    private void Take(double[] trial, double sum)
    {
        trial.CopyTo(_x, 0);
        _sum = sum;
    }
}
