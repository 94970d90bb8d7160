// Where the page of a lesson is, relative to the start.
export const lessonPath = (id: string) => `lessons/${id}.html`;
