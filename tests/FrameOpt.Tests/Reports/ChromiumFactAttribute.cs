namespace FrameOpt.Tests.Reports;

/// <summary>A test that needs Chromium; it says so and is skipped where there is none.</summary>
public sealed class ChromiumFactAttribute : FactAttribute
{
    public ChromiumFactAttribute()
    {
        if (Chromium.Path is null)
            Skip = "Chromium is not installed, so nothing here can open a page";
    }
}
