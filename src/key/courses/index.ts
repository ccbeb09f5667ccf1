export { COURSES, type LooseCourse, readCourses, strictCourse, USUAL_PASS } from './read.ts';
export * from './types.ts';
