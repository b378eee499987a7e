namespace Plumbmark.Engine.Bending;

/// <summary>What is believed about the spring-back of a set-up after the bites so far: weighted curves of spring-back against total set.</summary>
public sealed class BiteBelief
{
    private const double Tail = 0.025; // 95 % between the two tails
    private const double NormalTail = 1.959964; // the same tail of a normal distribution, in standard deviations
    private const double WorkingSpread = 0.012; // over itself, how far a real spring-back wanders about a smooth curve: own choice
    private const double DriftShare = 0.02; // extra doubt beyond what has been seen, over the set asked: own choice, tested as above
    private const double Negligible = 25; // e^−25 of the best weight: below the rounding of the sums
    private const double CoarseSet = 1e-5; // over the travel: far below what is read
    private const double FineSet = 1e-6;
    private const double Unheard = 1e-8; // of the whole weight: too little to move a quantile

    private readonly SpringBackTable _table;
    private readonly BiteNoise _noise;
    private readonly SpringBackCurve[] _curves;
    private readonly double[] _weights;

    internal BiteBelief(
        SpringBackTable table,
        BiteNoise noise,
        IReadOnlyList<SpringBackCurve> curves,
        double setSoFarMetres,
        double? lastCameBackMetres = null
    )
    {
        LastCameBackMetres = lastCameBackMetres;
        (_table, _noise, SetSoFarMetres) = (table, noise, Math.Max(0, setSoFarMetres));
        var best = curves.Max(c => c.LogWeight);
        _curves = [.. curves.Where(c => best - c.LogWeight < Negligible)];
        _weights = [.. _curves.Select(c => Math.Exp(c.LogWeight - best))];
        var total = _weights.Sum();
        for (var i = 0; i < _weights.Length; i++)
        {
            _weights[i] /= total;
        }
    }

    /// <summary>Set of all bites so far, m.</summary>
    public double SetSoFarMetres { get; }

    /// <summary>What came back of the last bite, m; null before the first.</summary>
    public double? LastCameBackMetres { get; }

    /// <summary>How well travel and straightness are read.</summary>
    public BiteNoise Noise => _noise;

    /// <summary>Travel at first yield as it is read, m, with what gives besides the part: middle and the 95 % interval.</summary>
    public Interval YieldTravelMetres => Spread(c => (1 + c.Give) * c.YieldTravel);

    /// <summary>What blocks, saddles and press give over what the part itself gives, average of what is believed.</summary>
    public double Give => Average(c => c.Give);

    /// <summary>Slope beyond yield over E, average of what is believed.</summary>
    public double HardeningRatio => Average(c => _table.HardeningRatios[c.Hardening]);

    /// <summary>Share by which the first yield came early (Bauschinger), average of what is believed.</summary>
    public double EarlyYield => Average(c => c.Early);

    /// <summary>What is believed after one more bite.</summary>
    public BiteBelief After(ObservedBite bite)
    {
        var drift = WorkingSpread * bite.CameBackMetres;
        var sigma = Hypotenuse(_noise.CameBackMetres, drift);
        var curves = new SpringBackCurve[_curves.Length];
        for (var i = 0; i < curves.Length; i++)
        {
            var expected = _curves[i].SetFor(_table, bite.TravelMetres, bite.SetBeforeMetres, CoarseSet);
            var z = (bite.SetMetres - expected) / sigma;

            // Student's t with 6 degrees of freedom instead of a normal tail: one misread bite must not wipe out the rest.
            curves[i] = _curves[i] with
            {
                LogWeight = _curves[i].LogWeight - (3.5 * Math.Log(1 + (z * z / 6))),
            };
        }

        return new(_table, _noise, curves, bite.SetBeforeMetres + bite.SetMetres, bite.CameBackMetres);
    }

    /// <summary>Spring-back of the next bite if it sets by an amount, m: middle and the 95 % interval.</summary>
    public Interval SpringBackMetres(double setMetres) => Spread(c => c.SpringBack(_table, SetSoFarMetres + setMetres));

    /// <summary>Travel of the next bite that would set by an amount, m: middle and the 95 % interval, reading error included.</summary>
    public Interval TravelForSetMetres(double setMetres)
    {
        var springBack = SpringBackMetres(setMetres);
        return Widened(new(setMetres + springBack.Low, setMetres + springBack.Middle, setMetres + springBack.High), setMetres);
    }

    /// <summary>Set that a travel leaves, m: middle and the 95 % interval, reading error included; below 0 only by reading error.</summary>
    public Interval SetForTravelMetres(double travelMetres)
    {
        var set = Spread(c => c.SetFor(_table, travelMetres, SetSoFarMetres, FineSet));
        return Widened(set, set.Middle);
    }

    /// <summary>Largest outermost strain that goes with a total set, average of what is believed.</summary>
    public double OuterStrainAt(double totalSetMetres) => Average(c => _table.OuterStrain(c.Hardening, totalSetMetres / c.YieldTravel));

    private Interval Widened(Interval value, double setMetres)
    {
        var extra = NormalTail * Hypotenuse(_noise.CameBackMetres, DriftShare * setMetres);
        return new(
            value.Middle - Hypotenuse(value.Middle - value.Low, extra),
            value.Middle,
            value.Middle + Hypotenuse(value.High - value.Middle, extra)
        );
    }

    private double Average(Func<SpringBackCurve, double> value)
    {
        double sum = 0;
        for (var i = 0; i < _curves.Length; i++)
        {
            sum += _weights[i] * value(_curves[i]);
        }

        return sum;
    }

    private Interval Spread(Func<SpringBackCurve, double> value)
    {
        var (values, weights, count) = (new double[_curves.Length], new double[_curves.Length], 0);
        for (var i = 0; i < _curves.Length; i++)
        {
            if (_weights[i] > Unheard)
            {
                (values[count], weights[count++]) = (value(_curves[i]), _weights[i]);
            }
        }

        Array.Sort(values, weights, 0, count);
        return new(
            Quantile(values, weights, count, Tail),
            Quantile(values, weights, count, 0.5),
            Quantile(values, weights, count, 1 - Tail)
        );
    }

    private static double Quantile(double[] values, double[] weights, int count, double share)
    {
        double sum = 0;
        for (var i = 0; i < count; i++)
        {
            sum += weights[i];
            if (sum >= share)
            {
                return values[i];
            }
        }

        return values[count - 1];
    }

    private static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
