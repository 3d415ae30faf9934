import { useCallback, useSyncExternalStore } from 'react';
import { useDevice } from './device-context.ts';

/**
 * A field that is not finished yet, kept on the device at each keystroke; `initial` forgets it. What was kept under
 * another shape by an older version is not used.
 */
export const useDraft = <V>(key: string, initial: V): readonly [V, (value: V) => void] => {
  const { drafts } = useDevice();
  const kept = useSyncExternalStore(
    useCallback((changed) => drafts.listen(changed), [drafts]),
    () => drafts.get(key),
  );
  const set = (value: V): void => (value === initial ? drafts.forget(key) : drafts.set(key, value));
  return [isLike(kept, initial) ? kept : initial, set];
};

/** Of the same make as the initial value: the same kind, and for a record all of its fields. */
const isLike = <V>(value: unknown, initial: V): value is V => {
  if (typeof initial !== 'object' || initial === null)
    return value !== undefined && typeof value === typeof initial;
  if (typeof value !== 'object' || value === null || Array.isArray(value) !== Array.isArray(initial))
    return false;
  return Array.isArray(initial) || Object.keys(initial).every((name) => Object.hasOwn(value, name));
};
