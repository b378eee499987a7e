namespace Plumbmark.Engine.Linkage;

/// <summary>
/// What moves the inner joints of the two track rods: a rack, or a steering box with drop arm, idler and centre link. Car axes (y to the left), metres.
/// </summary>
public abstract record SteeringGear
{
    private SteeringGear() { }

    /// <summary>Where the inner joints are.</summary>
    /// <param name="input">Rack: travel along its direction, metres. Box: turn of the drop arm about its axis, radians, right-handed. Zero is straight ahead.</param>
    public InnerJoints At(double input) =>
        this switch
        {
            Rack rack => rack.Moved(input),
            Box box => box.Turned(input),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The same gear with its inner joints standing off their drawn places.</summary>
    /// <param name="left">Off the left place, metres.</param>
    /// <param name="right">Off the right place, metres.</param>
    public SteeringGear Shifted(Vector3 left, Vector3 right) =>
        this switch
        {
            Rack rack => rack with { LeftInner = rack.LeftInner + left, RightInner = rack.RightInner + right },
            Box box => box with { LeftShift = box.LeftShift + left, RightShift = box.RightShift + right },
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>A rack: both inner joints move along one line.</summary>
    /// <param name="LeftInner">Left inner joint, straight ahead.</param>
    /// <param name="RightInner">Right inner joint, straight ahead.</param>
    /// <param name="Direction">The rack's line, a unit direction; positive travel is along it.</param>
    public sealed record Rack(Vector3 LeftInner, Vector3 RightInner, Vector3 Direction) : SteeringGear
    {
        /// <summary>A rack that lies along the line from its right inner joint to its left one; positive travel is to the left.</summary>
        public static Rack Between(Vector3 leftInner, Vector3 rightInner) => new(leftInner, rightInner, (leftInner - rightInner).Direction);

        internal InnerJoints Moved(double travelMetres) =>
            new(LeftInner + (travelMetres * Direction), RightInner + (travelMetres * Direction), default);
    }

    /// <summary>
    /// A steering box: the drop arm turns on the box's shaft, the idler on its own, and a centre link joins their ends. The link is carried without spin about its own length.
    /// </summary>
    public sealed record Box : SteeringGear
    {
        /// <summary>The drop arm.</summary>
        public required SwingArm DropArm { get; init; }

        /// <summary>The idler.</summary>
        public required SwingArm Idler { get; init; }

        /// <summary>Left inner joint, straight ahead.</summary>
        public required Vector3 LeftInner { get; init; }

        /// <summary>Right inner joint, straight ahead.</summary>
        public required Vector3 RightInner { get; init; }

        /// <summary>What carries the left inner joint.</summary>
        public required SteeringCarrier LeftCarrier { get; init; }

        /// <summary>What carries the right inner joint.</summary>
        public required SteeringCarrier RightCarrier { get; init; }

        /// <summary>How far the left inner joint stands off its drawn place wherever it is: a bracket or a shaft that has moved, metres.</summary>
        public Vector3 LeftShift { get; init; }

        /// <summary>The same for the right inner joint.</summary>
        public Vector3 RightShift { get; init; }

        internal InnerJoints Turned(double radians)
        {
            var drop = DropArm.Turned(DropArm.Joint, radians);
            var length = Vector3.Distance(DropArm.Joint, Idler.Joint);
            var reach = Idler.MeetAt(drop, length, out var idlerRadians);
            if (!reach.IsReached)
            {
                return new(default, default, reach);
            }

            var idler = Idler.Turned(Idler.Joint, idlerRadians);
            return new(
                LeftShift + Carried(LeftInner, LeftCarrier, radians, idlerRadians, drop, idler),
                RightShift + Carried(RightInner, RightCarrier, radians, idlerRadians, drop, idler),
                default
            );
        }

        private Vector3 Carried(Vector3 joint, SteeringCarrier carrier, double radians, double idlerRadians, Vector3 drop, Vector3 idler) =>
            carrier switch
            {
                SteeringCarrier.DropArm => DropArm.Turned(joint, radians),
                SteeringCarrier.Idler => Idler.Turned(joint, idlerRadians),
                _ => drop + LeastTurn((Idler.Joint - DropArm.Joint).Direction, (idler - drop).Direction, joint - DropArm.Joint),
            };

        // Turns v by the smallest rotation that carries unit a to unit b: v + c x v + c x (c x v) / (1 + a.b), c = a x b (Rodrigues).
        private static Vector3 LeastTurn(Vector3 a, Vector3 b, Vector3 v)
        {
            var c = Vector3.Cross(a, b);
            var once = Vector3.Cross(c, v);
            return v + once + ((1 / (1 + Vector3.Dot(a, b))) * Vector3.Cross(c, once));
        }
    }
}
