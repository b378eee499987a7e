namespace Plumbmark.Engine.Adjustment;

/// <summary>The shapes of equation a compiled network is made of; X and Y are the two components of a plan vector.</summary>
internal enum RowKind
{
    Plan,
    Direct,
    Height,
    Rise,
    Offset,
    CoordinateX,
    CoordinateY,
    CoordinateZ,
    MidpointX,
    MidpointY,
    StepX,
    StepY,
    BarX,
    BarY,
    ToolZero,
    ToolScale,
    DropErrorX,
    DropErrorY,
}
