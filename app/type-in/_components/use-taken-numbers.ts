"use client";

import { useEffect, useState } from "react";
import { takenNumbers } from "../_actions/book";

/** The lot numbers of a word that are given already; asked a moment after the word was typed. */
export function useTakenNumbers(stem: string): readonly string[] {
  const [taken, setTaken] = useState<readonly string[]>([]);
  useEffect(() => {
    let stands = true;
    const wait = setTimeout(async () => {
      const numbers = await takenNumbers(stem);
      if (stands) setTaken(numbers);
    }, 300);
    return () => {
      stands = false;
      clearTimeout(wait);
    };
  }, [stem]);
  return taken;
}
