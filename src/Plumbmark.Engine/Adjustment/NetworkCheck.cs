namespace Plumbmark.Engine.Adjustment;

/// <summary>Finds everything that keeps a network from being fitted, all at once.</summary>
internal static class NetworkCheck
{
    public static List<NetworkFault> Faults(Network network)
    {
        var faults = new List<NetworkFault>();
        faults.AddRange(Duplicates(network.Points.Select(p => p.Id)));
        faults.AddRange(Duplicates(network.Observations.Select(o => o.Id)));
        faults.AddRange(Duplicates(network.Tools.Select(t => t.Id)));
        foreach (var point in network.Points)
        {
            faults.AddRange(OfPoint(point));
        }

        foreach (var tool in network.Tools)
        {
            faults.AddRange(OfTool(tool));
        }

        var points = network.Points.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        var tools = network.Tools.Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var observation in network.Observations)
        {
            faults.AddRange(OfNames(observation, points, tools));
            faults.AddRange(OfNumbers(observation));
        }

        if (!network.Observations.Any(o => o is not (Observation.DropShift or Observation.DropDistance)))
        {
            faults.Add(new NetworkFault.NothingToFit());
        }

        return faults;
    }

    /// <summary>The points that a reading names, in the order in which its kind lists them.</summary>
    public static string[] PointsOf(Observation observation) =>
        observation.Match<string[]>(
            o => [o.From, o.To],
            o => [o.From, o.To],
            o => [o.Point],
            o => [o.From, o.To],
            o => [o.Point, o.From, o.To],
            o => [o.Point],
            o => [o.Point],
            o => [o.Point],
            o => [o.Point, o.MarkA, o.MarkB],
            o => [o.Point, o.Mark],
            o => [o.Point, o.Mark],
            o => [o.Point, o.NearEnd, o.FarEnd]
        );

    private static IEnumerable<NetworkFault> Duplicates(IEnumerable<string> names)
    {
        var (seen, told) = (new HashSet<string>(StringComparer.Ordinal), new HashSet<string>(StringComparer.Ordinal));
        foreach (var name in names)
        {
            if (!seen.Add(name) && told.Add(name))
            {
                yield return new NetworkFault.DuplicateName(name);
            }
        }
    }

    private static IEnumerable<NetworkFault> OfPoint(NetworkPoint point)
    {
        if (!(point.DropSigmaMetres >= 0) || !double.IsFinite(point.DropSigmaMetres))
        {
            yield return new NetworkFault.SigmaNotAllowed(point.Id, point.DropSigmaMetres);
        }

        foreach (var axis in Enum.GetValues<Axis>())
        {
            if (point.Of(axis) is Coordinate.Uncertain u && !IsSigma(u.SigmaMetres))
            {
                yield return new NetworkFault.SigmaNotAllowed(point.Id, u.SigmaMetres);
            }

            var known = point.Of(axis).Match(_ => 0, f => f.Metres, u => u.Metres);
            if (!double.IsFinite(known) || !double.IsFinite(point.SketchMetres(axis) ?? 0))
            {
                yield return new NetworkFault.NotFinite(point.Id);
            }
        }
    }

    private static IEnumerable<NetworkFault> OfTool(NetworkTool tool)
    {
        foreach (var sigma in (double[])[tool.ZeroSigmaMetres, tool.ScaleSigma])
        {
            if (!(sigma >= 0) || !double.IsFinite(sigma))
            {
                yield return new NetworkFault.SigmaNotAllowed(tool.Id, sigma);
            }
        }

        if (!double.IsFinite(tool.ZeroMetres) || !double.IsFinite(tool.Scale) || tool.Scale <= -1)
        {
            yield return new NetworkFault.NotFinite(tool.Id);
        }
    }

    private static IEnumerable<NetworkFault> OfNames(Observation observation, HashSet<string> points, HashSet<string> tools)
    {
        var names = PointsOf(observation);
        for (var i = 0; i < names.Length; i++)
        {
            if (!points.Contains(names[i]))
            {
                yield return new NetworkFault.UnknownPoint(observation.Id, names[i]);
            }
        }

        for (var i = 0; i < names.Length; i++)
        {
            if (Array.IndexOf(names, names[i]) == i && Array.LastIndexOf(names, names[i]) > i)
            {
                yield return new NetworkFault.SamePointTwice(observation.Id, names[i]);
            }
        }

        if (observation.Tool is { } tool && !tools.Contains(tool))
        {
            yield return new NetworkFault.UnknownTool(observation.Id, tool);
        }
    }

    private static IEnumerable<NetworkFault> OfNumbers(Observation observation)
    {
        var isDrop = observation is Observation.DropShift or Observation.DropDistance;
        if (!isDrop && !IsSigma(observation.SigmaMetres))
        {
            yield return new NetworkFault.SigmaNotAllowed(observation.Id, observation.SigmaMetres);
        }

        var isLength = observation is Observation.PlanDistance or Observation.DirectDistance or Observation.DropDistance;
        double[] numbers = observation switch
        {
            Observation.OffsetDrop o => [o.DxMetres, o.DyMetres],
            Observation.HoleEdgeDrop o => [o.DiameterMetres, o.DirectionRadians],
            Observation.BarDrop o => [o.StandOffMetres],
            _ => [observation.ValueMetres],
        };
        foreach (var number in numbers)
        {
            if (!double.IsFinite(number) || (isLength && number < 0))
            {
                yield return new NetworkFault.ValueNotAllowed(observation.Id, number);
            }
        }
    }

    private static bool IsSigma(double sigma) => sigma > 0 && double.IsFinite(sigma) && double.IsFinite(1 / (sigma * sigma));
}
