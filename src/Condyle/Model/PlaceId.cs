namespace Condyle.Model;

/// <summary>The place in the code that an element came from, as an opaque number: whoever records knows what it stands for.</summary>
internal readonly record struct PlaceId(int Value)
{
    /// <summary>No place: the call that recorded the element couldn't tell where it stands.</summary>
    public static PlaceId None => default;
}
