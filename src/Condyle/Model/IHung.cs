namespace Condyle.Model;

/// <summary>An element that hangs under a node.</summary>
internal interface IHung
{
    /// <summary>The node above; none in the world.</summary>
    Fact<RigNode?> Parent { get; set; }

    PlaceId ParentPlace { get; set; }
}
