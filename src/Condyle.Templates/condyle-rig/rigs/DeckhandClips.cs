using Condyle;
using Condyle.Host;
using Condyle.Runtime;

namespace Harbour._1;

/// <summary>What the deckhand does.</summary>
public sealed class DeckhandClips : IClipsFor<Deckhand>
{
    /// <inheritdoc/>
    public IEnumerable<Clip> Clips() => [Haul()];

    /// <summary>Two pulls on a rope, hand over hand.</summary>
    private static Clip Haul() => new Clip("haul", seconds: 2)
        .Move("hand_left", 0, -0.35f, -0.1f, 0.35f).Move("hand_left", 1, -0.35f, -0.4f, 0.2f).Move("hand_left", 2, -0.35f, -0.1f, 0.35f).Splined("hand_left")
        .Move("hand_right", 0, 0.35f, -0.4f, 0.2f).Move("hand_right", 1, 0.35f, -0.1f, 0.35f).Move("hand_right", 2, 0.35f, -0.4f, 0.2f).Splined("hand_right")
        .TurnAbout("turn_chest", Axis.Y, (0, -12), (1, 12), (2, -12)).Splined("turn_chest")
        .Mark(1, "grip");
}
