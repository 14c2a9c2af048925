/** The cookie in which the browser tells its time zone. */
export const zoneCookie = "kinrow-zone";
