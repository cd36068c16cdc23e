import { NIGHT } from '../../steps/making';
import { afterWorkingDays } from '../working-days';

const MINUTES_A_DAY = 24 * 60;

/**
 * The bench's days by the clock. A moment is minutes by the clock, counted from the beginning of the work on the
 * spreadsheet's day 0, so that what dries dries on closed days too. Days of work are counted from 0.
 */
export class WorkingTime {
  private readonly dates: number[] = [];

  /**
   * @param minutes that the bench works in a day, up to those of a whole day
   * @param start the spreadsheet's day; without it, day 0, and no day is closed
   * @param week days worked in a week, from Monday on
   */
  constructor(
    readonly minutes: number,
    private readonly start: number | undefined,
    private readonly week: number,
  ) {}

  /** The spreadsheet's day on which a day of work falls. */
  dateOf(day: number): number {
    return (this.dates[day] ??=
      this.start === undefined ? day : afterWorkingDays(Math.floor(this.start), day, this.week));
  }

  begins(day: number): number {
    return MINUTES_A_DAY * this.dateOf(day);
  }

  closes(day: number): number {
    return this.begins(day) + this.minutes;
  }

  /** The first day of work that is not over at a moment, looked for from another day on. */
  dayAt(moment: number, from = 0): number {
    let day = from;
    // A week of closed days leaves out none of its days of work.
    const weeks = Math.floor((moment - this.closes(day)) / (7 * MINUTES_A_DAY)) - 1;
    if (weeks > 0) day += weeks * (this.start === undefined ? 7 : this.week);
    while (this.closes(day) <= moment) day++;
    return day;
  }

  /** When so many days of work are over, counted from a moment at work. @param days 0 or more, parts of a day too */
  afterDays(moment: number, days: number): number {
    const from = this.dayAt(moment);
    const worked = Math.max(0, moment - this.begins(from)) + days * this.minutes;
    const whole = Math.floor(worked / this.minutes);
    return this.begins(from + whole) + worked - whole * this.minutes;
  }
}

/** When a wait that begins at a moment is over; what is to lie so long lies through the night (derived). */
export function afterWait(moment: number, minutes: number): number {
  const over = moment + minutes;
  if (minutes < NIGHT) return over;
  return Math.max(over, MINUTES_A_DAY * (Math.floor(moment / MINUTES_A_DAY) + 1));
}
