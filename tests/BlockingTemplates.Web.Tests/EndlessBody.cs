namespace BlockingTemplates.Web.Tests;

// A body of so many spaces whose length is not said.
internal sealed class EndlessBody(long length) : Stream
{
    private long _left = length;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

    public override int Read(byte[] buffer, int offset, int count)
    {
        var taken = (int)Math.Min(count, _left);
        Array.Fill(buffer, (byte)' ', offset, taken);
        _left -= taken;
        return taken;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
