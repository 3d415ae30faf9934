import type { Socket } from 'node:net';

/** What is no HTTP, or came too slowly, is told so in one line and let go. There is no request yet to answer. */
export const malformedRequest = (error: Error & { readonly code?: string }, socket: Socket): void => {
  if (!socket.writable || error.code === 'ECONNRESET') {
    socket.destroy();
    return;
  }
  const { status, reason } = answerTo(error.code);
  const body = JSON.stringify({ type: 'about:blank', title: reason, status });
  socket.end(
    `HTTP/1.1 ${status} ${reason}\r\ncontent-type: application/problem+json\r\n` +
      `content-length: ${Buffer.byteLength(body)}\r\nconnection: close\r\n\r\n${body}`,
  );
  setTimeout(() => socket.destroy(), 1_000).unref();
};

const answerTo = (code: string | undefined): { readonly status: number; readonly reason: string } => {
  switch (code) {
    case 'ERR_HTTP_REQUEST_TIMEOUT':
      return { status: 408, reason: 'Request Timeout' };
    case 'HPE_HEADER_OVERFLOW':
      return { status: 431, reason: 'Request Header Fields Too Large' };
    default:
      return { status: 400, reason: 'Bad Request' };
  }
};
