namespace Plumbmark.Engine.Adjustment;

/// <summary>Translates a solution from unknowns and rows into points and readings.</summary>
internal static class FitBuilder
{
    public static NetworkFit Build(NetworkState state, bool mirrorIsAssumed)
    {
        var covariance = CovarianceOf(state);
        var datum = new DatumReport(state.Motions.Names, mirrorIsAssumed);
        var leverage = Enumerable.Range(0, state.Network.RowCount).Select(state.Leverage).ToArray();
        var redundancy = state.Network.RowCount - state.Rank;
        return new NetworkFit(
            state,
            new FitParts(Points(state, covariance), Readings(state, leverage), Tools(state), covariance, datum, redundancy)
        );
    }

    private static NetworkCovariance CovarianceOf(NetworkState state)
    {
        var network = state.Network;
        var coordinates = new List<PointCoordinate>();
        var (index, drop, values) = (new List<int>(), new List<double>(), new List<double>());
        foreach (var point in network.Points)
        {
            foreach (var axis in Enum.GetValues<Axis>())
            {
                var a = (int)axis;
                if (!point.IsTouched[a] || state.Undetermined.Contains(point.Unknown[a]))
                {
                    continue;
                }

                var dropped = point.IsMarkOnly && axis is not Axis.Z;
                coordinates.Add(new PointCoordinate(point.Id, axis));
                index.Add(point.Unknown[a]);
                drop.Add(dropped ? point.Drop.Variance : 0);
                values.Add(ValueMetres(network, point, axis, state.Unknowns));
            }
        }

        return new NetworkCovariance(state.Cofactor, coordinates, [.. index], [.. drop], [.. values]);
    }

    // A fixed coordinate comes back as it was given, not through the local origin.
    private static double ValueMetres(CompiledNetwork network, PointSlot point, Axis axis, double[] x)
    {
        var a = (int)axis;
        if (point.Unknown[a] < 0 && network.Source.Points[Array.IndexOf(network.Points, point)].Of(axis) is Coordinate.Fixed f)
        {
            return f.Metres;
        }

        var dropError =
            !point.IsMarkOnly ? 0
            : axis is Axis.X ? point.Drop.MeanErrorX
            : axis is Axis.Y ? point.Drop.MeanErrorY
            : 0;
        return point.Base(a, x) - dropError + network.Origin[a];
    }

    private static List<PointEstimate> Points(NetworkState state, NetworkCovariance covariance)
    {
        var result = new List<PointEstimate>();
        foreach (var point in state.Network.Points.Where(p => p.IsTouched.Contains(true)))
        {
            double? Value(Axis axis) => covariance.IndexOf(point.Id, axis) is { } i ? covariance.ValuesMetres[i] : null;
            double? Sigma(Axis axis) => covariance.IndexOf(point.Id, axis) is { } i ? Math.Sqrt(Math.Max(0, covariance[i, i])) : null;
            result.Add(new(point.Id, Value(Axis.X), Value(Axis.Y), Value(Axis.Z), Sigma(Axis.X), Sigma(Axis.Y), Sigma(Axis.Z)));
        }

        return result;
    }

    private static List<ReadingEstimate> Readings(NetworkState state, double[] leverage)
    {
        var observations = state.Network.Source.Observations;
        var squares = new double[observations.Count];
        var signed = new double[observations.Count];
        var redundancy = new double[observations.Count];
        var equations = new int[observations.Count];
        for (var i = 0; i < state.Network.RowCount; i++)
        {
            var row = state.Network.Rows[i];
            if (row.Observation >= 0)
            {
                var residual = state.Rows.Misclosures[i] * row.Sigma;
                signed[row.Observation] = residual;
                squares[row.Observation] += residual * residual;
                redundancy[row.Observation] += Math.Clamp(1 - leverage[i], 0, 1);
                equations[row.Observation]++;
            }
        }

        var drops = DropReadings.Of(state);
        return
        [
            .. observations.Select(
                (o, i) =>
                    o is Observation.DropShift or Observation.DropDistance ? drops[o.Id]
                    : equations[i] == 1 ? Reading(o, signed[i], redundancy[i])
                    : Reading(o, Math.Sqrt(squares[i]), redundancy[i] / Math.Max(equations[i], 1))
            ),
        ];
    }

    private static ReadingEstimate Reading(Observation observation, double residual, double redundancy)
    {
        // Less than this share showing is rounding, not a check.
        const double Unchecked = 1e-9;
        var isChecked = redundancy > Unchecked;
        var root = Math.Sqrt(redundancy);
        return new ReadingEstimate(
            observation.Id,
            observation.ValueMetres,
            observation.ValueMetres + residual,
            residual,
            observation.SigmaMetres,
            isChecked ? redundancy : 0,
            isChecked ? residual / (observation.SigmaMetres * root) : null,
            isChecked ? Detection.Delta0 * observation.SigmaMetres / root : null
        );
    }

    private static List<ToolEstimate> Tools(NetworkState state)
    {
        double Sigma(int unknown) => unknown >= 0 ? Math.Sqrt(Math.Max(0, state.Cofactor.Of(unknown, unknown))) : 0;
        return
        [
            .. state.Network.Tools.Select(t => new ToolEstimate(
                t.Source.Id,
                t.ZeroAt(state.Unknowns),
                Sigma(t.Zero),
                t.ScaleAt(state.Unknowns),
                Sigma(t.Scale)
            )),
        ];
    }
}
