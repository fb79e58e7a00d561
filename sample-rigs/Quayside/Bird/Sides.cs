using Condyle;

namespace Quayside.Bird;

/// <summary>How the gull's sides are told apart.</summary>
internal static class Sides
{
    public static Tint TintOf(Side side) => side == Side.Left ? Tint.Teal : Tint.Coral;
}
