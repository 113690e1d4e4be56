/** After a form was refused: puts the reader at the first field that is wrong, once it is marked. */
export function focusFirstWrong(form: HTMLElement): void {
  requestAnimationFrame(() => {
    form
      .querySelector<HTMLElement>(
        'input[aria-invalid="true"], textarea[aria-invalid="true"], [data-invalid] [role="spinbutton"]',
      )
      ?.focus();
  });
}
