using Plumbmark.Inspection.Road;
using Plumbmark.Store;

namespace Plumbmark.Web.Road;

/// <summary>What the Road says of a car, worked out once for each state of its journal.</summary>
public sealed class RoadAnswers
{
    private const int KeptAtMost = 32;
    private readonly Lock _lock = new();
    private readonly Dictionary<long, (long Sequence, Lazy<RoadAnswer> Answer)> _byCar = [];

    /// <summary>The answer for a car as it stands.</summary>
    public RoadAnswer For(OpenCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        Lazy<RoadAnswer> answer;
        lock (_lock)
        {
            if (!_byCar.TryGetValue(car.Id, out var known) || known.Sequence != car.Sequence)
            {
                if (_byCar.Count >= KeptAtMost)
                {
                    _byCar.Clear();
                }

                known = (car.Sequence, new Lazy<RoadAnswer>(() => RoadInspection.Of(car.File)));
                _byCar[car.Id] = known;
            }

            answer = known.Answer;
        }

        return answer.Value;
    }
}
