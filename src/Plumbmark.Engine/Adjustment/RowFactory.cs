namespace Plumbmark.Engine.Adjustment;

/// <summary>Makes the equations of readings.</summary>
/// <param name="points">Index of each point.</param>
/// <param name="tools">Index of each tool.</param>
/// <param name="origin">Local origin, metres.</param>
internal sealed class RowFactory(IReadOnlyDictionary<string, int> points, IReadOnlyDictionary<string, int> tools, double[] origin)
{
    /// <summary>Appends the equations of a reading: one, two for a plan vector, none for a repeated drop (see <see cref="DropRecord"/>).</summary>
    public void Add(Observation observation, int index, List<Row> rows)
    {
        var tool = observation.Tool is { } id ? tools[id] : -1;
        void Row(RowKind kind, int a, int b = -1, int c = -1, double constant = 0, double? value = null) =>
            rows.Add(new Row(kind, a, b, c, tool, value ?? observation.ValueMetres, constant, observation.SigmaMetres, index));

        switch (observation)
        {
            case Observation.PlanDistance o:
                Row(RowKind.Plan, P(o.From), P(o.To));
                break;
            case Observation.DirectDistance o:
                Row(RowKind.Direct, P(o.From), P(o.To));
                break;
            case Observation.Height o:
                Row(RowKind.Height, P(o.Point));
                break;
            case Observation.Rise o:
                Row(RowKind.Rise, P(o.From), P(o.To));
                break;
            case Observation.Offset o:
                Row(RowKind.Offset, P(o.Point), P(o.From), P(o.To));
                break;
            case Observation.CoordinatePrior o:
                Row(RowKind.CoordinateX + (int)o.Axis, P(o.Point), value: o.ValueMetres - origin[(int)o.Axis]);
                break;
            case Observation.MidpointDrop o:
                Row(RowKind.MidpointX, P(o.Point), P(o.MarkA), P(o.MarkB));
                Row(RowKind.MidpointY, P(o.Point), P(o.MarkA), P(o.MarkB));
                break;
            case Observation.OffsetDrop o:
                Row(RowKind.StepX, P(o.Point), P(o.Mark), constant: o.DxMetres);
                Row(RowKind.StepY, P(o.Point), P(o.Mark), constant: o.DyMetres);
                break;
            case Observation.HoleEdgeDrop o:
                Row(RowKind.StepX, P(o.Point), P(o.Mark), constant: -o.DiameterMetres / 2 * Math.Cos(o.DirectionRadians));
                Row(RowKind.StepY, P(o.Point), P(o.Mark), constant: -o.DiameterMetres / 2 * Math.Sin(o.DirectionRadians));
                break;
            case Observation.BarDrop o:
                Row(RowKind.BarX, P(o.Point), P(o.NearEnd), P(o.FarEnd), o.StandOffMetres);
                Row(RowKind.BarY, P(o.Point), P(o.NearEnd), P(o.FarEnd), o.StandOffMetres);
                break;
        }
    }

    private int P(string id) => points[id];
}
