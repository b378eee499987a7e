namespace Plumbmark.Engine.Adjustment;

/// <summary>Start values from the sketch.</summary>
internal static class SketchStart
{
    public static double[] Of(CompiledNetwork network)
    {
        var x = new double[network.UnknownCount];
        for (var i = 0; i < network.Points.Length; i++)
        {
            foreach (var axis in Enum.GetValues<Axis>())
            {
                var u = network.Points[i].Unknown[(int)axis];
                if (u >= 0)
                {
                    var known = network.Source.Points[i].Of(axis).Match(_ => null, f => f.Metres, c => (double?)c.Metres);
                    x[u] = (known ?? network.Source.Points[i].SketchMetres(axis) ?? network.Origin[(int)axis]) - network.Origin[(int)axis];
                }
            }
        }

        return x;
    }
}
