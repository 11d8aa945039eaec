/** A picture of the teacher's that cannot be read; its description is the message. */
export class UnreadablePicture extends Error {}
