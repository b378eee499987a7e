namespace Plumbmark.Engine.Adjustment;

/// <summary>Names one entry of the coordinate vector and of the covariance: a point and an axis.</summary>
public readonly record struct PointCoordinate(string Point, Axis Axis);
