using Condyle.Tests.Shared;

namespace Newcomers.Tests;

/// <summary>
/// On a rigged hand that nobody here made: the generic hand of the package <c>@webxr-input-profiles/assets</c> 1.0.20, a skin of 25 joints that all hang
/// beside each other.
/// </summary>
public sealed class HandTests : IDisposable
{
    private readonly Harbour harbour = new();

    public void Dispose() => harbour.Dispose();

    /// <summary>Against gltf-validator, the validator of the standard, and three.js in Node.js.</summary>
    [SkippableTheory]
    [InlineData("left")]
    [InlineData("right")]
    public void A_hand_that_nobody_here_made_is_rigged_and_plays_elsewhere(string side)
    {
        var packages = OutsideChecks.LargePackages("hand", "94 MB");
        var file = Path.Combine(packages, "@webxr-input-profiles", "assets", "dist", "profiles", "generic-hand", side + ".glb");
        Assert.True(harbour.Run(file, harbour["out.glb"]) == 0, harbour.Output + harbour.Error);
        new LiveNewcomer(file).AssertRests();
        OutsideHarbour.AssertNoWorse(file, harbour["out.glb"]);
        OutsideHarbour.AssertPlays(file, harbour["out.glb"], frames: 60);
    }
}
