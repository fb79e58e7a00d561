using Condyle.Runtime;

namespace Quayside.Clips;

internal static class LiftCrate
{
    public static Clip Clip() => new Clip("lift_crate", seconds: 4).Move("body", at: 0).Move("body", at: 4, y: -0.1f);
}
