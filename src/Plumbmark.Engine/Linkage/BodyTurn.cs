namespace Plumbmark.Engine.Linkage;

/// <summary>The turn that carries one pair of square unit directions of a body into another.</summary>
internal readonly struct BodyTurn(Vector3 k0, Vector3 a0, Vector3 k1, Vector3 a1)
{
    private readonly Vector3 _b0 = Vector3.Cross(k0, a0);
    private readonly Vector3 _b1 = Vector3.Cross(k1, a1);

    public Vector3 Turned(Vector3 direction) =>
        (Vector3.Dot(direction, k0) * k1) + (Vector3.Dot(direction, a0) * a1) + (Vector3.Dot(direction, _b0) * _b1);
}
