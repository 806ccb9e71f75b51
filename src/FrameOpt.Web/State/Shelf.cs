using System.Text.Json;

namespace FrameOpt.Web.State;

/// <summary>The studies that the browser keeps between visits, each under a number.</summary>
/// <param name="device">Keeps them.</param>
public sealed class Shelf(Device device)
{
    private const string NumbersKey = "frameopt:studies";

    /// <summary>Every study that is kept, with its number.</summary>
    public IReadOnlyList<(string Number, StoredStudy Study)> All() =>
        [.. Numbers().Select(one => (one, Find(one))).Where(pair => pair.Item2 is not null).Select(pair => (pair.one, pair.Item2!))];

    /// <summary>A study that is kept, or null.</summary>
    public StoredStudy? Find(string number) => StoredJson.Study(device.Read(Key(number)));

    /// <summary>A number for one more study.</summary>
    public string Next()
    {
        var numbers = Numbers();
        var next = $"{numbers.Select(one => int.TryParse(one, out var value) ? value : 0).DefaultIfEmpty().Max() + 1}";
        Write([.. numbers, next]);
        return next;
    }

    /// <summary>Keeps a study; false where the browser keeps nothing.</summary>
    public bool Put(string number, StoredStudy study) =>
        device.Write(Key(number), JsonSerializer.Serialize(study, StoredJson.Default.StoredStudy));

    /// <summary>Forgets a study.</summary>
    public void Remove(string number)
    {
        Write([.. Numbers().Where(other => other != number)]);
        device.Write(Key(number), null);
    }

    private List<string> Numbers() => StoredJson.Numbers(device.Read(NumbersKey));

    private void Write(List<string> numbers) =>
        device.Write(NumbersKey, JsonSerializer.Serialize(numbers, StoredJson.Default.ListString));

    private static string Key(string number) => $"frameopt:study:{number}";
}
