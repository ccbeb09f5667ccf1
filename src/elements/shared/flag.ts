// Attributes that are on or off, as page editors and frameworks write them: alone, `="true"` or `="false"`.

/** Whether such an attribute is on; as a property's `converter`. */
export const flag = (value: string | null): boolean => value !== null && value !== 'false';
