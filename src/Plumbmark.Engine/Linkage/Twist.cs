namespace Plumbmark.Engine.Linkage;

/// <summary>
/// The instantaneous motion of a rigid body: a turning rate and the velocity of the body's point at the origin of the axes. Per radian of arm angle or per metre of wheel travel as
/// its owner says. <c>default</c> is rest.
/// </summary>
/// <param name="Linear">Velocity of the body's point at the origin, metres per unit.</param>
/// <param name="Angular">Turning rate, radians per unit, right-handed.</param>
public readonly record struct Twist(Vector3 Linear, Vector3 Angular)
{
    /// <summary>The twist of a body of which one point's velocity is known.</summary>
    public static Twist Through(Vector3 point, Vector3 velocity, Vector3 angular) => new(velocity - Vector3.Cross(angular, point), angular);

    /// <summary>The velocity of the body's point that is at <paramref name="point"/>.</summary>
    public Vector3 VelocityAt(Vector3 point) => Linear + Vector3.Cross(Angular, point);

    /// <summary>The same motion at another pace.</summary>
    public Twist Scaled(double scale) => new(scale * Linear, scale * Angular);
}
