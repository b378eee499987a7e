using System.Diagnostics;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The equations of docs/method.md, 1: misclosure model(x) − value of a row, and its derivatives.</summary>
/// <remarks>
/// Legend: d - length between two marks or points - m; n = (n_x, n_y, n_z) - unit vector from A to B; s, c - scale and zero of the tool:
/// reading = (1 + s) d + c.
/// </remarks>
internal static class RowModel
{
    /// <summary>Which unknowns a row's derivatives belong to, in the order in which <see cref="Derivatives"/> fills them.</summary>
    public static void Columns(CompiledNetwork network, in Row row, Span<int> columns)
    {
        var points = network.Points;
        var next = 0;
        switch (row.Kind)
        {
            case RowKind.Plan:
                next = PutPlan(columns, next, points[row.A], points[row.B]);
                next = PutDropErrors(columns, next, points[row.A], points[row.B]);
                PutTool(columns, next, network, row, hasZero: true);
                break;
            case RowKind.Direct:
                next = PutPlan(columns, next, points[row.A], points[row.B]);
                columns[next++] = points[row.A].Unknown[2];
                columns[next++] = points[row.B].Unknown[2];
                PutTool(columns, next, network, row, hasZero: true);
                break;
            case RowKind.Height:
                columns[next++] = points[row.A].Unknown[2];
                PutTool(columns, next, network, row, hasZero: true);
                break;
            case RowKind.Rise:
                columns[next++] = points[row.A].Unknown[2];
                columns[next++] = points[row.B].Unknown[2];
                PutTool(columns, next, network, row, hasZero: false);
                break;
            case RowKind.Offset:
                next = PutPlan(columns, next, points[row.A], points[row.B], points[row.C]);
                next = PutDropErrors(columns, next, points[row.A], points[row.B], points[row.C]);
                PutTool(columns, next, network, row, hasZero: false);
                break;
            case RowKind.CoordinateX or RowKind.CoordinateY or RowKind.CoordinateZ:
                columns[0] = points[row.A].Unknown[row.Kind - RowKind.CoordinateX];
                break;
            case RowKind.MidpointX or RowKind.MidpointY:
                PutComponent(columns, row.Kind - RowKind.MidpointX, points[row.A], points[row.B], points[row.C]);
                break;
            case RowKind.StepX or RowKind.StepY:
                PutComponent(columns, row.Kind - RowKind.StepX, points[row.A], points[row.B]);
                break;
            case RowKind.BarX or RowKind.BarY:
                columns[next++] = points[row.A].Unknown[row.Kind - RowKind.BarX];
                next = PutPlan(columns, next, points[row.B], points[row.C]);
                PutDropErrors(columns, next, points[row.B], points[row.C]);
                break;
            case RowKind.ToolZero:
                columns[0] = network.Tools[row.A].Zero;
                break;
            case RowKind.ToolScale:
                columns[0] = network.Tools[row.A].Scale;
                break;
            case RowKind.DropErrorX or RowKind.DropErrorY:
                columns[0] = points[row.A].DropError + (row.Kind - RowKind.DropErrorX);
                break;
            default:
                throw new UnreachableException();
        }
    }

    /// <summary>model(x) − value, metres (a scale prior: relative).</summary>
    public static double Misclosure(CompiledNetwork network, in Row row, double floorMetres, ReadOnlySpan<double> x)
    {
        var points = network.Points;
        switch (row.Kind)
        {
            case RowKind.Plan:
                return Read(network, row, x, PlanLength(points[row.A], points[row.B], x)) - row.Value;
            case RowKind.Direct:
                return Read(network, row, x, DirectLength(points[row.A], points[row.B], x)) - row.Value;
            case RowKind.Height:
                // The origin is taken off the reading first: both may be thousands of times larger than what is left.
                var above = network.Origin[2] - floorMetres;
                return points[row.A].Base(2, x) + (above - row.Value) + Error(network, row, x, points[row.A].Base(2, x) + above);
            case RowKind.Rise:
                var rise = points[row.B].Base(2, x) - points[row.A].Base(2, x);
                return (1 + Scale(network, row, x)) * rise - row.Value;
            case RowKind.Offset:
                return (1 + Scale(network, row, x)) * OffsetOf(points[row.A], points[row.B], points[row.C], x, default) - row.Value;
            case RowKind.CoordinateX or RowKind.CoordinateY or RowKind.CoordinateZ:
                return points[row.A].Base(row.Kind - RowKind.CoordinateX, x) - row.Value;
            case RowKind.MidpointX or RowKind.MidpointY:
                var m = row.Kind - RowKind.MidpointX;
                return points[row.A].Base(m, x) - (points[row.B].Mark(m, x) + points[row.C].Mark(m, x)) / 2;
            case RowKind.StepX or RowKind.StepY:
                var a = row.Kind - RowKind.StepX;
                return points[row.A].Base(a, x) - points[row.B].Mark(a, x) - row.Constant;
            case RowKind.BarX or RowKind.BarY:
                return BarMisclosure(points, row, x, default);
            case RowKind.ToolZero:
                return x[network.Tools[row.A].Zero] - row.Value;
            case RowKind.ToolScale:
                return x[network.Tools[row.A].Scale] - row.Value;
            case RowKind.DropErrorX or RowKind.DropErrorY:
                return x[points[row.A].DropError + (row.Kind - RowKind.DropErrorX)] - row.Value;
            default:
                throw new UnreachableException();
        }
    }

    /// <summary>∂ misclosure / ∂ unknown, in the order of <see cref="Columns"/>; entries of fixed coordinates are filled and not used.</summary>
    public static void Derivatives(CompiledNetwork network, in Row row, double floorMetres, ReadOnlySpan<double> x, Span<double> slots)
    {
        var points = network.Points;
        switch (row.Kind)
        {
            case RowKind.Plan:
                PlanDerivatives(network, row, x, slots);
                break;
            case RowKind.Direct:
                DirectDerivatives(network, row, x, slots);
                break;
            case RowKind.Height:
                slots[0] = 1 + Scale(network, row, x);
                slots[1] = 1;
                slots[2] = points[row.A].Base(2, x) + network.Origin[2] - floorMetres;
                break;
            case RowKind.Rise:
                slots[1] = 1 + Scale(network, row, x);
                slots[0] = -slots[1];
                slots[2] = points[row.B].Base(2, x) - points[row.A].Base(2, x);
                break;
            case RowKind.Offset:
                var length = OffsetOf(points[row.A], points[row.B], points[row.C], x, slots);
                for (var i = 0; i < 6; i++)
                {
                    slots[i] *= 1 + Scale(network, row, x);
                    slots[i + 6] = slots[i];
                }

                slots[12] = length;
                break;
            case RowKind.MidpointX or RowKind.MidpointY:
                ((ReadOnlySpan<double>)[1, -0.5, -0.5, -0.5, -0.5]).CopyTo(slots);
                break;
            case RowKind.StepX or RowKind.StepY:
                ((ReadOnlySpan<double>)[1, -1, -1]).CopyTo(slots);
                break;
            case RowKind.BarX or RowKind.BarY:
                BarMisclosure(points, row, x, slots);
                break;
            default:
                slots[0] = 1;
                break;
        }
    }

    private static int PutPlan(Span<int> columns, int next, params ReadOnlySpan<PointSlot> points)
    {
        foreach (var point in points)
        {
            columns[next++] = point.Unknown[0];
            columns[next++] = point.Unknown[1];
        }

        return next;
    }

    private static int PutDropErrors(Span<int> columns, int next, params ReadOnlySpan<PointSlot> points)
    {
        foreach (var point in points)
        {
            columns[next++] = point.DropError;
            columns[next++] = point.DropError >= 0 ? point.DropError + 1 : -1;
        }

        return next;
    }

    private static void PutTool(Span<int> columns, int next, CompiledNetwork network, in Row row, bool hasZero)
    {
        if (row.Tool < 0)
        {
            return;
        }

        if (hasZero)
        {
            columns[next++] = network.Tools[row.Tool].Zero;
        }

        columns[next] = network.Tools[row.Tool].Scale;
    }

    // The point itself, then every mark, then every mark's drop error.
    private static void PutComponent(Span<int> columns, int axis, PointSlot point, params ReadOnlySpan<PointSlot> marks)
    {
        columns[0] = point.Unknown[axis];
        for (var i = 0; i < marks.Length; i++)
        {
            columns[1 + i] = marks[i].Unknown[axis];
            columns[1 + marks.Length + i] = marks[i].DropError >= 0 ? marks[i].DropError + axis : -1;
        }
    }

    private static double Scale(CompiledNetwork network, in Row row, ReadOnlySpan<double> x) =>
        row.Tool >= 0 ? network.Tools[row.Tool].ScaleAt(x) : 0;

    private static double Error(CompiledNetwork network, in Row row, ReadOnlySpan<double> x, double length) =>
        row.Tool >= 0 ? network.Tools[row.Tool].ScaleAt(x) * length + network.Tools[row.Tool].ZeroAt(x) : 0;

    private static double Read(CompiledNetwork network, in Row row, ReadOnlySpan<double> x, double length) =>
        length + Error(network, row, x, length);

    private static double PlanLength(PointSlot a, PointSlot b, ReadOnlySpan<double> x) =>
        Length(b.Mark(0, x) - a.Mark(0, x), b.Mark(1, x) - a.Mark(1, x), 0);

    private static double DirectLength(PointSlot a, PointSlot b, ReadOnlySpan<double> x) =>
        Length(b.Base(0, x) - a.Base(0, x), b.Base(1, x) - a.Base(1, x), b.Base(2, x) - a.Base(2, x));

    private static double Length(double dx, double dy, double dz) => Math.Sqrt(dx * dx + dy * dy + dz * dz);

    private static void PlanDerivatives(CompiledNetwork network, in Row row, ReadOnlySpan<double> x, Span<double> slots)
    {
        var (a, b) = (network.Points[row.A], network.Points[row.B]);
        var (dx, dy) = (b.Mark(0, x) - a.Mark(0, x), b.Mark(1, x) - a.Mark(1, x));
        var d = Length(dx, dy, 0);

        // Two marks in one place have no direction; any unit vector serves, and the next step parts them.
        var (nx, ny) = d > 0 ? (dx / d, dy / d) : (1.0, 0.0);
        var k = 1 + Scale(network, row, x);
        ((ReadOnlySpan<double>)[-k * nx, -k * ny, k * nx, k * ny, -k * nx, -k * ny, k * nx, k * ny, 1, d]).CopyTo(slots);
    }

    private static void DirectDerivatives(CompiledNetwork network, in Row row, ReadOnlySpan<double> x, Span<double> slots)
    {
        var (a, b) = (network.Points[row.A], network.Points[row.B]);
        var (dx, dy, dz) = (b.Base(0, x) - a.Base(0, x), b.Base(1, x) - a.Base(1, x), b.Base(2, x) - a.Base(2, x));
        var d = Length(dx, dy, dz);
        var (nx, ny, nz) = d > 0 ? (dx / d, dy / d, dz / d) : (1.0, 0.0, 0.0);
        var k = 1 + Scale(network, row, x);
        ((ReadOnlySpan<double>)[-k * nx, -k * ny, k * nx, k * ny, -k * nz, k * nz, 1, d]).CopyTo(slots);
    }

    // h = ((t_x − f_x)(p_y − f_y) − (t_y − f_y)(p_x − f_x)) / |t − f|, positive to the left of f → t.
    private static double OffsetOf(PointSlot p, PointSlot from, PointSlot to, ReadOnlySpan<double> x, Span<double> slots)
    {
        var (ux, uy) = (to.Mark(0, x) - from.Mark(0, x), to.Mark(1, x) - from.Mark(1, x));
        var (wx, wy) = (p.Mark(0, x) - from.Mark(0, x), p.Mark(1, x) - from.Mark(1, x));
        var d = Length(ux, uy, 0);
        (ux, uy) = d > 0 ? (ux / d, uy / d) : (1.0, 0.0);
        var h = ux * wy - uy * wx;
        if (slots.IsEmpty)
        {
            return h;
        }

        // The left normal is (−u_y, u_x); the share t along the string moves its two ends against the point.
        var t = d > 0 ? (ux * wx + uy * wy) / d : 0;
        ((ReadOnlySpan<double>)[-uy, ux, (1 - t) * uy, -(1 - t) * ux, t * uy, -t * ux]).CopyTo(slots);
        return h;
    }

    // p − near − s u, with u the unit vector near → far; ∂u/∂far = (I − u uᵀ) / d.
    private static double BarMisclosure(PointSlot[] points, in Row row, ReadOnlySpan<double> x, Span<double> slots)
    {
        var axis = row.Kind - RowKind.BarX;
        var (p, near, far) = (points[row.A], points[row.B], points[row.C]);
        Span<double> u = [far.Mark(0, x) - near.Mark(0, x), far.Mark(1, x) - near.Mark(1, x)];
        var d = Length(u[0], u[1], 0);
        (u[0], u[1]) = d > 0 ? (u[0] / d, u[1] / d) : (1, 0);
        if (!slots.IsEmpty)
        {
            slots[0] = 1;
            for (var j = 0; j < 2; j++)
            {
                var own = j == axis ? 1.0 : 0.0;
                var turn = d > 0 ? row.Constant * (own - u[axis] * u[j]) / d : 0;
                slots[1 + j] = turn - own;
                slots[3 + j] = -turn;
                slots[5 + j] = slots[1 + j];
                slots[7 + j] = slots[3 + j];
            }
        }

        return p.Base(axis, x) - near.Mark(axis, x) - row.Constant * u[axis];
    }
}
