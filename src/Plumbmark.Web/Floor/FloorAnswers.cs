using Plumbmark.Inspection.Floor;
using Plumbmark.Store;

namespace Plumbmark.Web.Floor;

/// <summary>What the readings of a car say, worked out once for each state of its journal.</summary>
public sealed class FloorAnswers
{
    private const int KeptAtMost = 32;
    private readonly Lock _lock = new();
    private readonly Dictionary<long, (long Sequence, Lazy<FloorAnswer> Answer)> _byCar = [];

    /// <summary>The answer for a car as it stands.</summary>
    public FloorAnswer For(OpenCar car)
    {
        Lazy<FloorAnswer> answer;
        lock (_lock)
        {
            if (_byCar.TryGetValue(car.Id, out var known) && known.Sequence == car.Sequence)
            {
                answer = known.Answer;
            }
            else
            {
                if (_byCar.Count >= KeptAtMost)
                {
                    _byCar.Clear();
                }

                answer = new Lazy<FloorAnswer>(() => FloorInspection.Of(car.File));
                _byCar[car.Id] = (car.Sequence, answer);
            }
        }

        // Outside the lock: two phones on the same car wait for one calculation, those on others do not.
        return answer.Value;
    }
}
